package io.bindprep.cli.console;

/**
 * Configures the JDK's logging by leaving it without a handler: libraries log what the report says better, or what
 * concerns nobody at the machine. Public for the JDK alone, which makes one where something is to be logged.
 */
public final class NoLogging {}

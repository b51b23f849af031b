package io.bindprep.table;

import java.io.Serializable;

/**
 * A file that a job names.
 *
 * @param name as the job names it, for messages and sources
 * @param text what it says
 */
public record NamedText(String name, String text) implements Serializable {}

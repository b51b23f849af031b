package io.bindprep.maven;

import java.nio.file.Path;

/**
 * One PDF to check.
 *
 * @param name its path in the project, with slashes on every system: what reports and messages call it
 * @param report name of its reports without ending
 */
record Document(Path file, String name, String report) {}

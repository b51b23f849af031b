package io.bindprep.maven;

import java.nio.file.Path;

/**
 * One PDF to check. (Not called after an element of the POM: Maven would make one of it.)
 *
 * @param name its path in the project, with slashes on every system: what reports and messages call it
 * @param report name of its reports without ending
 */
record PdfInput(Path file, String name, String report) {}

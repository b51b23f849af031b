/** The command {@code bind-prep}: options into a request, the report onto the terminal, the outcome into an exit code. */
@NullMarked
package io.bindprep.cli;

import org.jspecify.annotations.NullMarked;

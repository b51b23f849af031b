/** The terminal: what is said of progress and problems, exit codes. */
@NullMarked
package io.bindprep.cli.console;

import org.jspecify.annotations.NullMarked;

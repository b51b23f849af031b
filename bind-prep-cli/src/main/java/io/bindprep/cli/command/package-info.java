/** The commands: options and what each does with them. */
@NullMarked
package io.bindprep.cli.command;

import org.jspecify.annotations.NullMarked;

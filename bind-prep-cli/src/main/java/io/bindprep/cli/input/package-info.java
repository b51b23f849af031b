/** Files in: named ones, folders looked through, standard input. */
@NullMarked
package io.bindprep.cli.input;

import org.jspecify.annotations.NullMarked;

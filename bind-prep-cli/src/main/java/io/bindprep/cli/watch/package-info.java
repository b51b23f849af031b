/** A watched folder: files found, settled, checked and written down. */
@NullMarked
package io.bindprep.cli.watch;

import org.jspecify.annotations.NullMarked;

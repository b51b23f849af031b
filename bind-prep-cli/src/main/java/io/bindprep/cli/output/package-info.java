/** Reports out: on standard output and into files. */
@NullMarked
package io.bindprep.cli.output;

import org.jspecify.annotations.NullMarked;

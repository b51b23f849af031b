/** The jobs of a day: day files, job files and PDFs as named on the command line. */
@NullMarked
package io.bindprep.cli.day;

import org.jspecify.annotations.NullMarked;

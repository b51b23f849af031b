/** Answers: what do all reports for people say alike? The verdict, the numbers of the job, reasons, steps and cautions, the safety line. */
@NullMarked
package io.bindprep.report.words;

import org.jspecify.annotations.NullMarked;

/** Answers: how is a report written down? A writer takes the report and returns text. */
@NullMarked
package io.bindprep.report;

import org.jspecify.annotations.NullMarked;

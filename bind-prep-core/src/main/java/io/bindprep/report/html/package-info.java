/** Answers: how does a report look as one HTML file that needs nothing else? */
@NullMarked
package io.bindprep.report.html;

import org.jspecify.annotations.NullMarked;

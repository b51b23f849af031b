/** Answers: how does a build server read a report? SARIF 2.1.0 and JUnit XML. */
@NullMarked
package io.bindprep.report.build;

import org.jspecify.annotations.NullMarked;

/** Answers: how does a program read a report? JSON, held against its schema. */
@NullMarked
package io.bindprep.report.json;

import org.jspecify.annotations.NullMarked;

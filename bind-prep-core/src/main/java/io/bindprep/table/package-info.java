/** Answers: what stands in a table of published values? Tables are comma-separated text (RFC 4180) with comment lines in front. */
@NullMarked
package io.bindprep.table;

import org.jspecify.annotations.NullMarked;

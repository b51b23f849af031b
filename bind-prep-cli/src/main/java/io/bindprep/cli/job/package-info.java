/** The job: options over the job file, and the files that either names. */
@NullMarked
package io.bindprep.cli.job;

import org.jspecify.annotations.NullMarked;

/** Answers: what does this job ask for? Settings by job key, from any front end, made into one immutable record. */
@NullMarked
package io.bindprep.job;

import org.jspecify.annotations.NullMarked;

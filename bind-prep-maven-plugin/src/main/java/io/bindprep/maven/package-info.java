/** The goals: parameters into requests, reports into files, the outcome into the build's. */
@NullMarked
package io.bindprep.maven;

import org.jspecify.annotations.NullMarked;

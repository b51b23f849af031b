/** Answers: which settings are there, what do they mean, and how are they written? Option help, commented files and schemas come from it. */
@NullMarked
package io.bindprep.setting;

import org.jspecify.annotations.NullMarked;

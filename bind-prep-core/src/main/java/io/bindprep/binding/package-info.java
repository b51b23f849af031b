/** Answers: which pattern, element, hole row, pulled pins and lifts bind this stack? */
@NullMarked
package io.bindprep.binding;

import org.jspecify.annotations.NullMarked;

/** Answers: in which order is a document checked? The stages strung together, bounded in time. */
@NullMarked
package io.bindprep.stage;

import org.jspecify.annotations.NullMarked;

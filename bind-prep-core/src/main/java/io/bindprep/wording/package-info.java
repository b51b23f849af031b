/** Answers: how is it said? Numbers with their nouns, lists of pages, lengths, quotes: every other package that words something uses these. */
@NullMarked
package io.bindprep.wording;

import org.jspecify.annotations.NullMarked;

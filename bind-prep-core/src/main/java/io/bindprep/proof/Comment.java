package io.bindprep.proof;

import io.bindprep.marks.Verdict;

/**
 * Something found on a page, in words that a reader lists.
 *
 * @param verdict PUNCHED, TIGHT or UNCHECKED
 * @param place where it is; the whole strip for a page that was not read whole
 */
public record Comment(Verdict verdict, Outline place, String words) {}

package io.bindprep.page;

/**
 * A top-level bookmark: where a chapter begins, as a rule.
 *
 * @param title as the document has it, shortened; hostile text
 * @param page the page it leads to, from 1
 */
public record Bookmark(String title, int page) {}

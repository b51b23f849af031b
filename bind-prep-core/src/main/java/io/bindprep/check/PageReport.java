package io.bindprep.check;

import io.bindprep.block.PagePlace;
import io.bindprep.marks.PageVerdict;
import io.bindprep.page.PageFacts;

/** One page: its size, its place in the book and its verdict. */
public record PageReport(PageFacts facts, PagePlace place, PageVerdict verdict) {}

package io.bindprep.job;

import io.bindprep.paper.Stock;

/** Pages on their own stock; they start on a fresh leaf, and so does what follows. */
public record Insert(PageRange pages, Stock stock) {}

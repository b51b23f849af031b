package io.bindprep.job;

import io.bindprep.paper.Stock;
import org.jspecify.annotations.Nullable;

/**
 * A cover: its stock and, where it is printed, the one or two pages of the PDF that it carries.
 *
 * @param printed one page (back blank) or two; null for blank stock
 */
public record Cover(Stock stock, @Nullable PageRange printed) {}

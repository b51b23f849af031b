package io.bindprep.proof;

import io.bindprep.page.PageEdge;
import java.util.List;

/**
 * Drawings over one page.
 *
 * @param page page number from 1
 * @param edge the edge that is bound, as the reader sees the page
 * @param comments worst first
 */
public record ProofPage(int page, PageEdge edge, Strip strip, List<Comment> comments) {
    public ProofPage {
        comments = List.copyOf(comments);
    }
}

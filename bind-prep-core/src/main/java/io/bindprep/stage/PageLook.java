package io.bindprep.stage;

import io.bindprep.block.PagePlace;
import io.bindprep.pdf.OpenedPdf;

/** A further look at each page while a check has it open, on any of its threads. */
public interface PageLook {
    /** No further look. */
    PageLook NONE = (pdf, place, near) -> {};

    /**
     * Looks at a page.
     *
     * @param near whether something stands so near the binding edge that some way to punch would mind it
     */
    void look(OpenedPdf pdf, PagePlace place, boolean near);
}

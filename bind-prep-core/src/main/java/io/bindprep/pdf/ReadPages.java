package io.bindprep.pdf;

import io.bindprep.page.PageFacts;
import io.bindprep.pdf.document.Layers;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.document.PageTree;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * A document and its pages, as read before their content is looked at.
 *
 * @param problems why a page is not looked at, each; null for none
 */
record ReadPages(
        PDDocument document,
        LeanDocument objects,
        Layers layers,
        List<PageTree.Entry> entries,
        List<PageFacts> facts,
        List<@Nullable String> problems) {}

package io.bindprep.pdf.ink;

/**
 * A page's own content without what paints away from the strip: a strip is drawn several times over, and PDFBox goes
 * through all of the content each time.
 *
 * @param bytes what stays; whatever sets the state, clips or moves what follows does
 * @param numbers for each operator that stays, which of the whole content it is, from 1
 */
public record StripContent(byte[] bytes, int[] numbers) {}

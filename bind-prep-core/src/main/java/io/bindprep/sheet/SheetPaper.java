package io.bindprep.sheet;

/** Paper of the job sheet. */
public enum SheetPaper {
    /** 210 x 297 mm (ISO 216). */
    A4(210, 297),
    /** 8.5 x 11 in (ASME Y14.1 size A). */
    LETTER(215.9, 279.4);

    final double widthMm;
    final double heightMm;

    SheetPaper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }
}

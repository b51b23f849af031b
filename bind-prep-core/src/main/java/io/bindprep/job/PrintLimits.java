package io.bindprep.job;

import io.bindprep.unit.Length;

/**
 * Needs of a page for printing and cutting, apart from the binding.
 *
 * @param imagePpi dots an inch that a picture has at least at its printed size
 * @param bleed how far art that reaches the trim goes beyond it; zero where leaves are not cut
 */
public record PrintLimits(int imagePpi, Length bleed) {
    /** 150 dots an inch and 3 mm; common practice, no source (1/8 in is as common a bleed, and more). */
    public static final PrintLimits USUAL = new PrintLimits(150, Length.ofMm(3));
}

package io.bindprep.paper;

import io.bindprep.unit.Length;

/**
 * A sheet size by name.
 *
 * @param name its name ("A4", "letter"), "landscape" added where it lies on its side, or the numbers as given
 * @param toleranceWidth how far a cut sheet's width may lie off, either way
 * @param toleranceHeight how far a cut sheet's height may lie off, either way
 * @param source where size and tolerance come from
 */
public record SheetSize(
        String name, Length width, Length height, Length toleranceWidth, Length toleranceHeight, String source) {
    /** Returns true if a sheet of this size is within tolerance, limits included. */
    public boolean matches(Length otherWidth, Length otherHeight) {
        return width.minus(otherWidth).abs().compareTo(toleranceWidth) <= 0
                && height.minus(otherHeight).abs().compareTo(toleranceHeight) <= 0;
    }

    SheetSize landscape() {
        return new SheetSize(name + " landscape", height, width, toleranceHeight, toleranceWidth, source);
    }

    /** Error of a sheet in the worse direction. */
    Length off(Length otherWidth, Length otherHeight) {
        return width.minus(otherWidth).abs().max(height.minus(otherHeight).abs());
    }
}

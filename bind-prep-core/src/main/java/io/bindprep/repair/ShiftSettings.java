package io.bindprep.repair;

import io.bindprep.job.PageRange;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Settings of a repair.
 *
 * @param pageByPage whether each page moves only as far as it must; else all pages move alike
 * @param gutter how far all content moves whatever the findings say; null to move as little as clears the holes
 * @param outerMargin distance that what prints keeps from the outer edge when it is moved there
 * @param minimumScale smallest scale that content may be brought to, above 0 and at most 1
 * @param blankVersos whether a blank page goes behind each page, so that a one-sided document prints on fronts only
 * @param pad whether blank pages go where the book leaves a back blank, the last one above all
 * @param allowSigned whether a signed document may be changed, which voids its signatures
 * @param keep pages that stay as they are, with their findings
 * @param marks whether new crop marks are drawn on pages that move
 * @param extendBleed whether bleed that is missing at the binding edge is made
 * @param onlyHit whether only what is too near the binding edge moves, where it can move by itself
 */
public record ShiftSettings(
        boolean pageByPage,
        @Nullable Length gutter,
        Length outerMargin,
        double minimumScale,
        boolean blankVersos,
        boolean pad,
        boolean allowSigned,
        List<PageRange> keep,
        boolean marks,
        boolean onlyHit,
        boolean extendBleed) {
    public ShiftSettings {
        keep = List.copyOf(keep);
    }

    /** Office printers leave 4 to 5 mm unprinted; common practice, no source. */
    private static final Length OUTER = Length.ofMm(5);
    /** Text of 10 pt becomes 9 pt; our own limit. */
    private static final double MINIMUM_SCALE = 0.9;

    private static final Length MOST = Length.ofMm(50);
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3})?)\\s*%?");

    /** Everything as built in. */
    public static ShiftSettings builtIn() {
        return new ShiftSettings(
                false, null, OUTER, MINIMUM_SCALE, false, false, false, List.of(), false, false, false);
    }

    /**
     * Settings with lengths and scale as people write them.
     *
     * @param gutter null for none
     * @param outerMargin null for the built-in one
     * @param minimumScale in percent; null for the built-in one
     * @throws SettingException where one of them cannot be read or two of them do not go together
     */
    public static ShiftSettings of(
            boolean pageByPage,
            @Nullable String gutter,
            @Nullable String outerMargin,
            @Nullable String minimumScale,
            boolean blankVersos,
            boolean pad,
            boolean allowSigned)
            throws SettingException {
        if (gutter != null && pageByPage) {
            throw new SettingException(
                    "page-by-page",
                    "true",
                    "it does not go with gutter, which moves every page by the same length",
                    "leave out one of the two",
                    List.of());
        }
        return new ShiftSettings(
                pageByPage,
                gutter == null ? null : length("gutter", gutter, 1),
                outerMargin == null ? OUTER : length("outer-margin", outerMargin, 0),
                minimumScale == null ? MINIMUM_SCALE : scale(minimumScale),
                blankVersos,
                pad,
                allowSigned,
                List.of(),
                false,
                false,
                false);
    }

    /**
     * The same, with pages that stay as they are, and so do their findings.
     *
     * @param pages such as "1, 84" or "1-4"; null for none
     * @throws SettingException where they cannot be read
     */
    public ShiftSettings keeping(@Nullable String pages) throws SettingException {
        return pages == null ? this : with(PageRange.readAll("keep", pages), marks, onlyHit, extendBleed);
    }

    /** The same, with new crop marks round the trim of each page that moves, or without. */
    public ShiftSettings marking(boolean crop) {
        return with(keep, crop, onlyHit, extendBleed);
    }

    /**
     * The same, with only what is too near the binding edge moved, or with all content.
     *
     * @throws SettingException where other settings move content
     */
    public ShiftSettings onlyHit(boolean only) throws SettingException {
        if (only && (gutter != null || pageByPage || marks)) {
            throw new SettingException(
                    "only-hit",
                    "true",
                    "it leaves the content in its place, so it does not go with gutter, page-by-page or marks",
                    "leave out one of the two",
                    List.of());
        }
        return with(keep, marks, only, extendBleed);
    }

    /** The same, with bleed made at the binding edge where art ends too soon, or without. */
    public ShiftSettings extendingBleed(boolean extend) {
        return with(keep, marks, onlyHit, extend);
    }

    private ShiftSettings with(List<PageRange> pages, boolean crop, boolean only, boolean extend) {
        return new ShiftSettings(
                pageByPage,
                gutter,
                outerMargin,
                minimumScale,
                blankVersos,
                pad,
                allowSigned,
                pages,
                crop,
                only,
                extend);
    }

    /** Returns true if a page stays as it is. */
    public boolean keeps(int page) {
        return keep.stream().anyMatch(range -> range.holds(page));
    }

    private static Length length(String key, String text, long least) throws SettingException {
        Length length;
        try {
            length = Length.parse(text);
        } catch (IllegalArgumentException e) {
            throw new SettingException(
                    key,
                    text,
                    "\"" + text + "\" is not a length with a unit",
                    "write it as \"6 mm\" or \"1/4 in\"",
                    List.of());
        }
        if (length.units() < least || length.compareTo(MOST) > 0) {
            throw new SettingException(
                    key,
                    text,
                    text + " is not between 0 and " + MOST.inMm(),
                    "give the length that content is to move or to keep",
                    List.of());
        }
        return length;
    }

    private static double scale(String text) throws SettingException {
        Matcher m = PERCENT.matcher(text.strip());
        double percent = m.matches() ? new BigDecimal(m.group(1)).doubleValue() : 0;
        if (percent < 50 || percent > 100) {
            throw new SettingException(
                    "minimum-scale",
                    text,
                    "\"" + text + "\" is not a percentage between 50 and 100",
                    "write it as \"90 %\"; 100 % allows no scaling",
                    List.of());
        }
        return percent / 100;
    }
}

package io.bindprep.pdf.strip;

import io.bindprep.marks.EdgePicture.Nature;
import io.bindprep.pdf.strip.PictureGround.Stretch;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells a page or scan from a photograph by lettering, and where there is little by the ground along the binding edge.
 *
 * <p>A page and a scan have one ground all along. Of 516 scanned pages measured none has it on less than 95 % of its
 * stretches, of 118 photographs 100 on less than 90 %.
 */
final class PictureNature {
    /** Share of stretches with the same ground, from which a picture is a page; measured, see above. */
    private static final double ONE_GROUND = 0.9;
    /** The same where the ground is a scan's paper. */
    private static final double ONE_PAPER = 0.95;
    /** Share of even ground below which noise is no paper's; measured, see {@link Lettering}. */
    private static final double EVEN_PAPER = 0.92;
    /** Lightness below which a ground that is not flat is no paper: grey 150; common practice, no source. */
    private static final double DARKEST_PAPER = 62;
    /** Specks on a dark ground that a night has, and a word or a logo has not; our choice. */
    private static final int LIGHTS = 12;
    /** A ground that changes evenly changes by no more from one stretch to the next, of 255; our choice. */
    private static final int MOST_STEP = 9;
    /** A picture no longer than 4 cm along the edge may be a banner: half of it on one ground leaves it in doubt. */
    private static final int BANNER = 40 * StripRaster.DOTS_PER_MM;
    /** Dots this near to white or black, of 255, and the share of them that makes a picture bilevel; our choice. */
    private static final int NEARLY = 40;

    private static final double BILEVEL = 0.85;
    /** Flat colours beyond this many are no page's panels; our choice. */
    private static final int MOST_PANELS = 4;

    private final PictureDots dots;
    private final PictureGround ground;
    private final Stretch[] stretches;

    private PictureNature(PictureDots dots, PictureGround ground) {
        this.dots = dots;
        this.ground = ground;
        this.stretches = ground.stretches();
    }

    /** The nature by ground of a picture that is not black and white alone; grain without lettering is a photograph's. */
    static Nature of(PictureDots dots, PictureGround ground, Lettering dark, Lettering light) {
        PictureNature picture = new PictureNature(dots, ground);
        return picture.isGrain(dark, light) ? Nature.PHOTOGRAPH : picture.byGround(dark, light);
    }

    /** Returns true for one ground along half of the edge, or an even one: masonry that looks like rows of letters has neither. */
    static boolean isOnPaper(PictureGround ground, Lettering dark, Lettering light) {
        return ground.commonShare() >= PictureGround.MAIN_SHARE || evenShare(dark, light) >= EVEN_PAPER;
    }

    private static double evenShare(Lettering dark, Lettering light) {
        return Math.max(dark.ground().evenShare(), light.ground().evenShare());
    }

    /** Returns true for noise without any lettering, on uneven ground or too dark for paper, and for no banner. */
    private boolean isGrain(Lettering dark, Lettering light) {
        if (dots.h() <= BANNER || ground.noise() < PictureGround.QUIET || dark.possible() || light.possible()) {
            return false;
        }
        boolean uneven = ground.noise() > PictureGround.QUIET && evenShare(dark, light) < EVEN_PAPER;
        return uneven || Lightness.of(ground.common()) < DARKEST_PAPER;
    }

    /** Returns true for a dark ground that is not flat, or has many specks and no lettering: no paper but a night. */
    private boolean isNight(Lettering dark, Lettering light) {
        if (Lightness.of(ground.common()) >= DARKEST_PAPER) {
            return false;
        }
        boolean lettered = dark.likely() || light.likely();
        return ground.noise() >= PictureGround.QUIET
                || !lettered && Pieces.of(light.marks(), dots.w()).size() >= LIGHTS;
    }

    /**
     * A page has one ground, or flat panels on white; a ground that changes evenly, flat colours and white beside pictures
     * leave it in doubt.
     */
    private Nature byGround(Lettering dark, Lettering light) {
        double noise = ground.noise();
        if (ground.commonShare() >= (noise > PictureGround.QUIET ? ONE_PAPER : ONE_GROUND)) {
            return isNight(dark, light) ? Nature.IN_DOUBT : Nature.PAGE;
        }
        boolean mostlyOne = (PictureGround.isPaper(ground.common()) || dots.h() <= BANNER)
                && ground.commonShare() >= PictureGround.MAIN_SHARE;
        if (isOfPanels()) {
            return mostlyOne ? Nature.PAGE : Nature.IN_DOUBT;
        }
        // a photograph has grain; what has none may be a banner or a screen
        return mostlyOne || noise == 0 || isEven() ? Nature.IN_DOUBT : Nature.PHOTOGRAPH;
    }

    /**
     * Returns true where nearly all dots are about white or black, and enough of them white: no photograph. White is of one
     * tone where its ground is clean; the tones of snow are not.
     */
    static boolean isBilevel(PictureDots dots, PictureGround ground) {
        boolean clean = ground.noise() <= PictureGround.QUIET && StripRaster.off(ground.common(), 0xffffff) <= NEARLY;
        int paper = clean ? ground.common() : 0xffffff;
        int near = clean ? 2 * PictureGround.SAME : NEARLY;
        if (!clean && ground.commonShare() < ONE_GROUND) {
            return false;
        }
        int white = 0;
        int black = 0;
        int n = 0;
        for (int i = 0; i < dots.rgb().length; i++) {
            if (dots.own()[i]) {
                white += StripRaster.off(dots.rgb()[i], paper) <= near ? 1 : 0;
                black += StripRaster.off(dots.rgb()[i], 0) <= NEARLY ? 1 : 0;
                n++;
            }
        }
        return white + black >= BILEVEL * n && 4 * white >= n;
    }

    /** Returns true for a page of a few flat colours without noise. */
    private boolean isOfPanels() {
        List<Integer> colours = new ArrayList<>();
        int flat = 0;
        for (Stretch s : stretches) {
            if (s.share() >= PictureGround.MAIN_SHARE && s.noise() <= PictureGround.QUIET) {
                flat++;
                if (colours.stream().noneMatch(c -> StripRaster.off(c, s.rgb()) <= PictureGround.SAME)) {
                    colours.add(s.rgb());
                }
            }
        }
        return flat >= ONE_GROUND * stretches.length && colours.size() <= Math.min(MOST_PANELS, flat / 2);
    }

    /** Returns true where nearly all dots lie on a ground that changes little from one stretch to the next. */
    private boolean isEven() {
        for (int i = 1; i < stretches.length; i++) {
            int step = StripRaster.off(stretches[i].rgb(), stretches[i - 1].rgb());
            if (step > MOST_STEP
                    || stretches[i].noise() > MOST_STEP / 4.0
                    || stretches[i].share() < PictureGround.MAIN_SHARE) {
                return false;
            }
        }
        return ground.share() >= ONE_GROUND;
    }
}

package io.bindprep.pdf.strip;

import io.bindprep.marks.EdgePicture.By;
import io.bindprep.marks.EdgePicture.Nature;

/**
 * A picture through the binding edge, judged: black on white decides first, then lettering, its ground, grain and evenness.
 *
 * @param by feature that decided
 * @param marks dots that stand off the ground; none of a photograph
 */
record JudgedPicture(Nature nature, By by, boolean[] marks) {

    static JudgedPicture of(PictureDots dots, PictureGround ground) {
        boolean bilevel = PictureNature.isBilevel(dots, ground);
        if (bilevel && ground.noise() <= PictureGround.QUIET) {
            boolean[] marks = GroundMarks.of(dots, ground);
            EdgeRegions.drop(dots, ground, false, marks);
            return new JudgedPicture(Nature.PAGE, By.GROUND, marks);
        }
        Lettering dark = Lettering.of(dots, LocalGround.light(dots));
        Lettering light = Lettering.of(dots, LocalGround.dark(dots));
        boolean lettered = dark.likely() || light.likely();
        Nature nature = bilevel ? Nature.PAGE : PictureNature.of(dots, ground, dark, light);
        if ((dark.sure() || light.sure()) && PictureNature.isOnPaper(ground, dark, light)) {
            return new JudgedPicture(Nature.PAGE, By.LETTERING, print(dots, ground, Nature.PAGE, dark, light));
        }
        if (lettered && nature != Nature.PAGE) {
            return new JudgedPicture(Nature.IN_DOUBT, By.LETTERING, print(dots, ground, nature, dark, light));
        }
        if (nature == Nature.PHOTOGRAPH) {
            boolean[] print = Lettering.upon(dots, dark.ground());
            print = print == null ? Lettering.upon(dots, light.ground()) : print;
            if (print != null) {
                return new JudgedPicture(Nature.IN_DOUBT, By.LETTERING, print);
            }
        }
        boolean grained = ground.noise() > PictureGround.QUIET;
        boolean[] marks =
                nature == Nature.PHOTOGRAPH ? new boolean[dots.rgb().length] : print(dots, ground, nature, dark, light);
        if (!lettered && !grained) {
            EdgeRegions.drop(dots, ground, true, marks);
        }
        boolean[] even = nature == Nature.PHOTOGRAPH || grained ? EvenGround.marks(dots) : null;
        if (even != null) {
            add(even, marks);
            return nature == Nature.PAGE
                    ? new JudgedPicture(nature, By.GROUND, marks)
                    : new JudgedPicture(Nature.IN_DOUBT, By.EVEN_GROUND, marks);
        }
        boolean pale = nature == Nature.PAGE && grained && !lettered && !GroundMarks.isDark(dots, ground, marks);
        return pale
                ? new JudgedPicture(Nature.IN_DOUBT, By.PALE_MARKS, marks)
                : new JudgedPicture(nature, By.GROUND, marks);
    }

    /** Dots that stand off the ground of their stretch, where it has one, and off the ground around lettering. */
    private static boolean[] print(
            PictureDots dots, PictureGround ground, Nature nature, Lettering dark, Lettering light) {
        boolean none = nature == Nature.PHOTOGRAPH || ground.share() < PictureGround.MAIN_SHARE;
        boolean[] marks = none && (dark.likely() || light.likely())
                ? new boolean[dots.rgb().length]
                : GroundMarks.of(dots, ground);
        if (dark.likely()) {
            add(dark.marks(), marks);
        }
        if (light.likely()) {
            add(light.marks(), marks);
        }
        return marks;
    }

    private static void add(boolean[] some, boolean[] all) {
        for (int i = 0; i < all.length; i++) {
            all[i] |= some[i];
        }
    }
}

package io.bindprep.pdf.strip;

import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.pdf.ink.FoundMark;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Marks that pictures really make in the strip: their dots that stand off the ground, gathered into pieces.
 *
 * <p>A picture that stops short of the binding edge lies on bare paper. One that runs through the edge is judged by its
 * {@link PictureNature}: on a page or scan each piece counts, a photograph is background, and what may be either makes one
 * estimated mark of all its pieces.
 */
final class PictureInk {
    /** A stretch that prints a tone is a background, of 256 steps in one process colour. */
    private static final int LEAST_TONE = 10;
    /** A piece that touches the binding edge and is this broad is a shadow or border of the scan, or a tint. */
    private static final double BROAD_MM = 3;

    /** A narrower one of a scan is its edge's shadow from this length on; our choice. */
    private static final double LONG_MM = 20;

    private static final double MM = 1.0 / StripRaster.DOTS_PER_MM;

    private final PictureDots dots;
    private final FoundMark picture;
    private final boolean throughEdge;
    private boolean noisy;

    private PictureInk(PictureDots dots, FoundMark picture) {
        this.dots = dots;
        this.picture = picture;
        throughEdge = picture.mark.kind() == MarkKind.BACKGROUND;
    }

    /**
     * The marks of one picture: the picture itself as background where it runs through the binding edge and has a tone, and
     * its pieces.
     *
     * @param without the strip without the picture, where something else lies there; null where nothing does
     * @param picture what is visible of it by its outline
     * @param others all other marks of the strip
     * @param seen takes what a picture through the edge was judged by
     */
    static List<Mark> marks(
            StripRaster raster,
            @Nullable StripRaster without,
            FoundMark picture,
            List<FoundMark> others,
            List<EdgePicture> seen) {
        PictureDots dots = PictureDots.of(raster, without, picture.mark, others);
        if (dots.rgb().length == 0) {
            return List.of();
        }
        PictureInk ink = new PictureInk(dots, picture);
        if (dots.isOverlay()) {
            return ink.marks(GroundMarks.ofOverlay(dots));
        }
        return ink.throughEdge ? ink.onOwnGround(seen) : ink.marks(GroundMarks.ofPaper(dots));
    }

    private List<Mark> onOwnGround(List<EdgePicture> seen) {
        PictureGround ground = new PictureGround(dots);
        noisy = ground.noise() > 0;
        List<Mark> marks = new ArrayList<>();
        if (isToned(ground)) {
            marks.add(picture.mark);
        }
        JudgedPicture judged = JudgedPicture.of(dots, ground);
        seen.add(new EdgePicture(
                judged.nature(), judged.by(), (int) Math.round(100 * ground.commonShare()), ground.noise()));
        List<Mark> pieces = marks(judged.marks());
        marks.addAll(judged.nature() == EdgePicture.Nature.IN_DOUBT ? asOne(pieces) : pieces);
        return marks;
    }

    /** Returns true if most dots of some stretch carry ink. */
    private boolean isToned(PictureGround ground) {
        for (int top = 0; top < dots.h(); top += ground.length()) {
            int bottom = Math.min(dots.h(), top + ground.length());
            int inked = 0;
            for (int i = top * dots.w(); i < bottom * dots.w(); i++) {
                inked += StripRaster.off(dots.rgb()[i], 0xffffff) >= LEAST_TONE ? 1 : 0;
            }
            if (2 * inked > dots.w() * (bottom - top)) {
                return true;
            }
        }
        return false;
    }

    private List<Mark> marks(boolean[] set) {
        List<Mark> marks = new ArrayList<>();
        for (int[] piece : Pieces.of(set, dots.w())) {
            marks.add(mark(piece));
        }
        return marks;
    }

    private Mark mark(int[] piece) {
        Rectangle box = Pieces.box(piece, dots.w());
        boolean[] window = new boolean[box.height * dots.w()];
        for (int at : piece) {
            window[at - box.y * dots.w()] = true;
        }
        DotShape shape = DotShape.of(window, dots.w(), dots.x0(), dots.y0() + box.y, picture.box());
        Rectangle2D b = shape.bounds();
        // a dot that the picture only touches is not its own
        boolean atEdge = throughEdge && b.getMinX() < 3 * MM && b.getHeight() >= BROAD_MM;
        boolean shadow = atEdge && (b.getWidth() >= BROAD_MM || b.getHeight() >= LONG_MM && noisy);
        return shape.mark(shadow ? MarkKind.BACKGROUND : MarkKind.IMAGE, "");
    }

    /** One estimated mark for all that may be marks: the nearest. */
    private static List<Mark> asOne(List<Mark> pieces) {
        return pieces.stream()
                .filter(m -> m.kind() == MarkKind.IMAGE)
                .min(Comparator.comparingDouble(Mark::nearMm).thenComparingDouble(Mark::alongStartMm))
                .map(m -> List.of(new Mark(
                        MarkKind.IMAGE,
                        Stage.ESTIMATE,
                        m.shape(),
                        m.nearMm(),
                        m.farMm(),
                        m.alongStartMm(),
                        m.alongEndMm(),
                        "")))
                .orElse(List.of());
    }
}

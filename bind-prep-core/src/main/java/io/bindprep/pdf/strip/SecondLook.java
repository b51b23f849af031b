package io.bindprep.pdf.strip;

import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.pdf.ink.FoundMark;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.ink.StripCollector.Source;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.jspecify.annotations.Nullable;

/**
 * The second stage: where the outlines along a binding edge can't tell what prints, the strip is drawn, once with
 * everything and once without what is in doubt; what makes no difference does not print.
 *
 * <p>So soft masks, blending, patterns, knockout, clips by text and later covers are settled by what is left of them.
 * White lettering is settled by whether it stands out from the dots around it. An ink beyond the process colours keeps its
 * outline, since its look on a screen proves nothing. Pictures are settled by {@link PictureInk}.
 */
public final class SecondLook {
    /** So many pictures or other things in doubt of a page are also taken out one by one: each costs a drawing. */
    private static final int MOST_ALONE = 3;

    private final List<FoundMark> found;
    private final StripRaster.Source source;
    private final StripRaster whole;
    private final Map<FoundMark, Mark> remaining = new IdentityHashMap<>();
    private final List<EdgePicture> pictures = new ArrayList<>();
    private int alone;
    private @Nullable StripRaster withoutPictures;

    private SecondLook(List<FoundMark> found, StripRaster.Source source, StripRaster whole) {
        this.found = found;
        this.source = source;
        this.whole = whole;
    }

    /** Returns true if something nearer than that to the binding edge is in doubt. */
    public static boolean isNeeded(List<FoundMark> found, double clearMm) {
        return found.stream().anyMatch(f -> (f.isPicture() || f.doubtful) && f.mark.nearMm() < clearMm);
    }

    /** The marks of a page, each settled by the stage it says. */
    public static PageMarks settled(int page, List<FoundMark> found, StripRaster.Source source) throws IOException {
        SecondLook look = new SecondLook(found, source, source.draw(LeftOut.NOTHING));
        List<Mark> marks = look.marks();
        return new PageMarks(page, marks, look.whole.problem()).withPictures(look.pictures);
    }

    private List<Mark> marks() throws IOException {
        settleDoubtful();
        List<Mark> marks = new ArrayList<>();
        for (FoundMark f : found) {
            if (f.isPicture()) {
                marks.addAll(PictureInk.marks(whole, without(f), f, found, pictures));
            } else if (!f.doubtful || f.paint.tone() == Tone.SPOT) {
                marks.add(f.mark);
            } else {
                Mark mark = remaining.get(f);
                if (mark == null && isWhiteLettering(f) && DoubtfulMark.whiteStandsOut(whole, f.mark)) {
                    mark = DoubtfulMark.seen(f.mark);
                }
                if (mark != null) {
                    marks.add(mark);
                }
            }
        }
        return marks;
    }

    /** White areas are there to cover; what else is white may be read upon a tint. */
    private static boolean isWhiteLettering(FoundMark f) {
        return f.paint.tone() == Tone.WHITE
                || f.paint.tone() == Tone.BLENDED_WHITE
                        && f.mark.kind() != MarkKind.ART
                        && f.mark.kind() != MarkKind.BACKGROUND;
    }

    private void settleDoubtful() throws IOException {
        List<FoundMark> doubtful = found.stream()
                .filter(f ->
                        f.doubtful && !f.isPicture() && f.paint.tone() != Tone.WHITE && f.paint.tone() != Tone.SPOT)
                .toList();
        if (doubtful.isEmpty()) {
            return;
        }
        StripRaster without = source.draw(leavingOut(sources(doubtful)));
        for (FoundMark f : doubtful) {
            Mark mark = without.leftAllOut() ? DoubtfulMark.differing(whole, without, f) : f.mark;
            if (mark != null && (mark.kind() == MarkKind.BACKGROUND || !DoubtfulMark.isEven(whole, mark))) {
                remaining.put(f, mark);
            }
        }
        if (without.leftAllOut() && sources(doubtful).size() > 1) {
            dropOneByOne();
        }
    }

    /**
     * Takes what is left out one by one, the last painted first. What makes no difference stays out: of two equal things in
     * the same place one must remain.
     */
    private void dropOneByOne() throws IOException {
        List<Source> sources = new ArrayList<>(sources(found.stream()
                .filter(f -> {
                    Mark mark = remaining.get(f);
                    return mark != null && mark.kind() != MarkKind.BACKGROUND; // of those one note is as good as two
                })
                .toList()));
        if (sources.size() > MOST_ALONE) {
            return;
        }
        Collections.reverse(sources);
        Set<Source> out = new LinkedHashSet<>();
        for (Source s : sources) {
            out.add(s);
            StripRaster without = source.draw(leavingOut(out));
            if (without.leftAllOut() && DoubtfulMark.same(whole, without)) {
                remaining.keySet().removeIf(f -> f.source.equals(s));
            } else {
                out.remove(s);
            }
        }
    }

    /** The strip without a picture; null where nothing else lies there, or where it could not be left out. */
    private @Nullable StripRaster without(FoundMark picture) throws IOException {
        Rectangle2D box = picture.box();
        if (found.stream().noneMatch(f -> f != picture && f.box().intersects(box))) {
            return null;
        }
        StripRaster without;
        if (alone < MOST_ALONE) {
            alone++;
            without = source.draw(leavingOut(Set.of(picture.source)));
        } else {
            if (withoutPictures == null) {
                withoutPictures = source.draw(leavingOut(
                        sources(found.stream().filter(FoundMark::isPicture).toList())));
            }
            without = withoutPictures;
        }
        return without.leftAllOut() ? without : null;
    }

    private static Set<Source> sources(List<FoundMark> some) {
        Set<Source> sources = new LinkedHashSet<>();
        some.forEach(f -> sources.add(f.source));
        return sources;
    }

    private static LeftOut leavingOut(Set<Source> out) {
        Map<Integer, String> operators = new HashMap<>();
        Set<COSDictionary> annotations = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Source s : out) {
            COSDictionary annotation = s.annotation();
            if (annotation == null) {
                operators.put(s.operator(), s.name());
            } else {
                annotations.add(annotation);
            }
        }
        return new LeftOut(operators, annotations);
    }
}

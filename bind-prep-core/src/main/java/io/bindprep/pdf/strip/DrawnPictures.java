package io.bindprep.pdf.strip;

import io.bindprep.pdf.syntax.Budget;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/** The parts of a page's pictures that lie near the strip, kept from one drawing of the page to the next. */
public final class DrawnPictures {
    /** Most bytes that kept pictures may unpack to; the rest is unpacked again. */
    private static final long MOST_BYTES = 8L * 1024 * 1024;

    private final Map<Key, PictureCut> cuts = new HashMap<>();
    private long bytes;

    /** A picture by its identity, and where it lies. */
    private record Key(COSBase picture, AffineTransform place) {
        @Override
        public boolean equals(Object o) {
            return o instanceof Key k && k.picture == picture && k.place.equals(place);
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(picture) * 31 + place.hashCode();
        }
    }

    /** As {@link PictureCut#of}. */
    @Nullable
    PictureCut of(PDImage picture, Matrix ctm, Rectangle2D near, PDResources resources, Budget budget)
            throws IOException {
        Key key = new Key(picture.getCOSObject(), ctm.createAffineTransform());
        PictureCut known = cuts.get(key);
        if (known != null) {
            return known;
        }
        PictureCut cut = PictureCut.of(picture, ctm, near, resources, budget);
        if (cut != null && cut.picture() != picture) {
            long size = 4L * cut.picture().getWidth() * cut.picture().getHeight();
            if (bytes + size <= MOST_BYTES) {
                bytes += size;
                cuts.put(key, cut);
            }
        }
        return cut;
    }
}

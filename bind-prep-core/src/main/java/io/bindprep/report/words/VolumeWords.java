package io.bindprep.report.words;

import io.bindprep.volume.SplitReason;

/** English of the reasons of a split. */
final class VolumeWords {
    private VolumeWords() {}

    static String of(SplitReason reason) {
        if (reason instanceof SplitReason.NothingKnown) {
            return "no split: nothing is known of the thickness that an element takes";
        }
        if (reason instanceof SplitReason.NoThinnerStock) {
            return "no stock of the catalogue is thin enough to keep it one volume";
        }
        if (reason instanceof SplitReason.OnThinnerStock r) {
            return "on " + r.stock() + " the stack would be " + r.stack().inMm() + ", where the largest element takes "
                    + r.most().inMm();
        }
        if (reason instanceof SplitReason.Volumes r) {
            return r.count() + " volumes: the fewest that fit " + r.most().inMm()
                    + " each, covers in every one, cut near even shares at top-level bookmarks where one begins a leaf"
                    + " within a quarter of a share (our own rule)";
        }
        SplitReason.NoSplit r = (SplitReason.NoSplit) reason;
        return "no split helps: a leaf or the covers alone are too thick, or it would take more than " + r.mostVolumes()
                + " volumes";
    }
}

package io.bindprep.check;

import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.PageVerdict;
import java.util.List;
import java.util.stream.Stream;

/** {@code background-at-binding-edge}: a tint or picture that runs through the binding. */
final class BackgroundRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = s.verdicts().stream()
                .filter(PageVerdict::background)
                .map(PageVerdict::page)
                .toList();
        if (pages.isEmpty()) {
            return List.of();
        }
        return List.of(Say.onPages(
                "background-at-binding-edge",
                Severity.NOTE,
                pages,
                "A tint or picture runs through the binding edge on " + Say.pages(pages.size())
                        + ". The holes will cut it." + photographs(s.verdicts()),
                "A plain tint is harmless. Look at pages where a face, lettering or other detail lies there."));
    }

    /** Says which pages hold photographs, and by what they were told from scans. */
    private static String photographs(List<PageVerdict> verdicts) {
        List<PageVerdict> pages = verdicts.stream()
                .filter(v -> photographs(v).findAny().isPresent())
                .toList();
        if (pages.isEmpty()) {
            return "";
        }
        int most = pages.stream()
                .flatMap(BackgroundRule::photographs)
                .mapToInt(EdgePicture::groundPercent)
                .max()
                .orElse(0);
        return " Judged a photograph on " + Say.pages(pages.size())
                + ": a page or scan has one ground colour along the edge, this has one on " + most + " % at most.";
    }

    private static Stream<EdgePicture> photographs(PageVerdict verdict) {
        return verdict.basics().edgePictures().stream().filter(p -> p.nature() == EdgePicture.Nature.PHOTOGRAPH);
    }
}

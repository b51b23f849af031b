package io.bindprep.check;

import io.bindprep.paper.Stock;
import io.bindprep.volume.Split;
import io.bindprep.volume.Volume;
import io.bindprep.wording.LengthText;
import java.math.BigDecimal;
import java.util.stream.Collectors;

/** The ways out of a stack too thick, in words. */
final class SplitAdvice {
    private static final int MOST_VOLUMES = 4;

    private SplitAdvice() {}

    /** "bind it in 2 volumes (pages 1-300, 301-612 from "Fish"). Or keep it one book on offset-40 (...)". */
    static String of(Split split) {
        Stock thinner = split.thinner();
        if (split.volumes().isEmpty()) {
            return thinner == null ? "ask for fewer pages or a thinner stock" : "keep it one book on " + stock(thinner);
        }
        int more = split.volumes().size() - MOST_VOLUMES;
        return "bind it in " + split.volumes().size() + " volumes (pages "
                + split.volumes().stream()
                        .limit(MOST_VOLUMES)
                        .map(SplitAdvice::volume)
                        .collect(Collectors.joining(", "))
                + (more > 0 ? " and " + more + " more" : "") + ")"
                + (thinner == null ? "" : ". Or keep it one book on " + stock(thinner));
    }

    private static String volume(Volume volume) {
        return volume.firstPage() + "-" + volume.lastPage()
                + (volume.bookmark().isEmpty() ? "" : " from " + Say.quote(volume.bookmark()));
    }

    private static String stock(Stock stock) {
        BigDecimal grammage = stock.grammage();
        return stock.name() + " (" + (grammage == null ? "" : LengthText.plain(grammage, 0) + " g/m2, ")
                + LengthText.plain(stock.caliperUm(), 1) + " um per sheet)";
    }
}

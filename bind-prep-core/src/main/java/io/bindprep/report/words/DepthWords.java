package io.bindprep.report.words;

import io.bindprep.binding.DepthGround;
import io.bindprep.binding.DepthGround.Asked;
import io.bindprep.binding.DepthGround.BySize;
import io.bindprep.binding.DepthGround.ByStack;
import io.bindprep.binding.DepthGround.Content;
import io.bindprep.binding.DepthGround.OnlySetting;
import io.bindprep.binding.DepthGround.Turns;
import io.bindprep.binding.DepthGround.Weighed;
import io.bindprep.binding.Reason;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** English of the reasons of the depth. */
final class DepthWords {
    private final Measures m;

    private DepthWords(Measures m) {
        this.m = m;
    }

    static String of(Reason.OfDepth reason, Measures measures) {
        return new DepthWords(measures).of(reason);
    }

    private String of(Reason.OfDepth reason) {
        if (reason instanceof Reason.DepthMeasured r) {
            return "in the middle of this row the holes were measured to lie " + m.fine(r.centre())
                    + " from the binding edge at " + r.setting();
        }
        if (reason instanceof Reason.DepthOfBook r) {
            return holes(r.setting()) + ", the same for every volume";
        }
        Reason.DepthChosen r = (Reason.DepthChosen) reason;
        return holes(r.setting()) + " (" + r.setting().source() + "): " + ground(r.ground());
    }

    private String holes(DepthSetting setting) {
        return "depth " + setting.name() + ", holes " + centre(setting) + " from the binding edge";
    }

    private String centre(DepthSetting setting) {
        return m.whole() ? LengthText.both(setting.centre()) : m.mark(setting.centre());
    }

    private String ground(DepthGround ground) {
        if (ground instanceof Asked g) {
            return "as the job says; " + turns(g.turns());
        }
        if (ground instanceof OnlySetting g) {
            return "the only setting of the punch; " + turns(g.turns());
        }
        if (ground instanceof Weighed g) {
            Turns suggested = g.suggestedTurns();
            return suggests(g)
                    + (suggested == null ? "" : "at " + g.suggested() + " " + turns(suggested) + "; ")
                    + turns(g.turns())
                    + (g.shallowest() ? ", the shallowest there is" : "")
                    + content(g.content());
        }
        return "where ring mechanisms have the holes, the centre of the pattern";
    }

    private String suggests(Weighed ground) {
        if (ground.suggestion() instanceof ByStack by) {
            return "the nominal stack of " + (m.whole() ? LengthText.both(by.nominal()) : m.thickness(by.nominal()))
                    + " suggests " + ground.suggested() + ", as the punch's settings say; ";
        }
        if (ground.suggestion() instanceof BySize by) {
            return (by.largest() ? "as no element takes the whole, the largest of " : "the element of ")
                    + m.sold(by.size()) + " suggests " + ground.suggested() + ", the deepest with at most "
                    + m.down(by.paper()) + " of paper outside the holes, else the shallowest ("
                    + by.share() + " of its size: " + by.source() + "); ";
        }
        return "no element is known, so that the shallowest is taken; ";
    }

    private String turns(Turns turns) {
        Length below = turns.below();
        Length size = turns.size();
        if (below == null || size == null) {
            return "whether pages turn freely is not known without an element";
        }
        boolean freely = turns.outside().compareTo(below) < 0;
        return m.beside(turns.outside(), below) + " of paper outside the holes is "
                + (freely
                        ? "less than the " + m.beside(below, turns.outside()) + " at which pages no longer turn freely"
                        : "not less than " + m.beside(below, turns.outside()) + ", so that pages do not turn freely")
                + " (sqrt(D^2 - t^2) of the element of " + m.size(size) + " and the "
                + (turns.atMost() ? "thickest likely" : "nominal") + " stack of "
                + m.thickness(turns.stack()) + ", derived)";
    }

    private static String content(@Nullable Content content) {
        if (content == null) {
            return "; the content was not looked at";
        }
        return content.counts().stream()
                        .map(c -> c.setting() + " hits " + c.pages().hit() + " and has "
                                + c.pages().tight() + " tight")
                        .collect(Collectors.joining(", ", "; of the pages ", ""))
                + (content.unchecked() == 0
                        ? ""
                        : ", and of " + content.unchecked() + " that could not be read whole nothing is known");
    }
}

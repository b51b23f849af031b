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
            return holes(r.setting()) + ", as for every volume";
        }
        Reason.DepthChosen r = (Reason.DepthChosen) reason;
        return holes(r.setting()) + " (" + r.setting().source() + "), " + ground(r.ground());
    }

    private String holes(DepthSetting setting) {
        return "depth " + setting.name() + ", holes " + centre(setting) + " from the binding edge";
    }

    private String centre(DepthSetting setting) {
        return m.whole() ? LengthText.both(setting.centre()) : m.mark(setting.centre());
    }

    private String ground(DepthGround ground) {
        if (ground instanceof Asked g) {
            return "as the job says. " + turns(g.turns());
        }
        if (ground instanceof OnlySetting g) {
            return "the only setting of the punch. " + turns(g.turns());
        }
        if (ground instanceof Weighed g) {
            Turns suggested = g.suggestedTurns();
            return suggests(g)
                    + (suggested == null ? "" : "At " + g.suggested() + ": " + turns(suggested) + ". ")
                    + turns(g.turns())
                    + (g.shallowest() ? ". It is the shallowest setting" : "")
                    + content(g.content());
        }
        return "where ring mechanisms have their rings";
    }

    private String suggests(Weighed ground) {
        if (ground.suggestion() instanceof ByStack by) {
            return "by the stack. The nominal stack of "
                    + (m.whole() ? LengthText.both(by.nominal()) : m.thickness(by.nominal())) + " suggests "
                    + ground.suggested() + ", as the punch's settings say. ";
        }
        if (ground.suggestion() instanceof BySize by) {
            return "by the element. "
                    + (by.largest() ? "No element takes the whole stack; the largest, " : "The element, ")
                    + m.sold(by.size()) + ", suggests " + ground.suggested() + ". That is the deepest with at most "
                    + m.down(by.paper()) + " of paper outside the holes, " + by.share()
                    + " of the element's size. Otherwise it is the shallowest (" + by.source() + "). ";
        }
        return "the shallowest, as no element is known. ";
    }

    private String turns(Turns turns) {
        Length below = turns.below();
        Length size = turns.size();
        if (below == null || size == null) {
            return "Turning of pages: not known without an element";
        }
        boolean freely = turns.outside().compareTo(below) < 0;
        return (freely ? "Pages turn freely: " : "Pages turn stiffly: ") + m.beside(turns.outside(), below)
                + " of paper outside the holes, limit " + m.beside(below, turns.outside())
                + ". The limit is sqrt(D^2 - t^2) for an element of " + m.size(size) + " and a "
                + (turns.atMost() ? "thickest likely" : "nominal") + " stack of "
                + m.thickness(turns.stack()) + " (derived)";
    }

    private static String content(@Nullable Content content) {
        if (content == null) {
            return ". Content: not checked";
        }
        return content.counts().stream()
                        .map(c -> c.setting() + " " + c.pages().hit() + " hit, "
                                + c.pages().tight() + " tight")
                        .collect(Collectors.joining("; ", ". Pages: ", ""))
                + (content.unchecked() == 0 ? "" : "; " + content.unchecked() + " not checked");
    }
}

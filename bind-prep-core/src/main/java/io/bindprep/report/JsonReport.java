package io.bindprep.report;

import io.bindprep.block.Block;
import io.bindprep.check.Finding;
import io.bindprep.check.PageRanges;
import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Verdict;
import io.bindprep.paper.Stack;
import io.bindprep.problem.UnreadableInputException;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a report as JSON, schema version 1: names never change their meaning, new ones may come. Lengths are millimetres
 * rounded to four decimals, grams to one.
 */
public final class JsonReport {
    private static final int SCHEMA_VERSION = 1;

    private JsonReport() {}

    /**
     * The report, indented, ending in a line feed; the same bytes for the same report everywhere.
     *
     * @param allPages whether clear pages are listed too
     */
    public static String write(Report r, boolean allPages) {
        ObjectNode root = Json.object();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("outcome", Json.word(r.outcome()));
        root.put("failed", r.failed());
        ObjectNode input = root.putObject("input");
        input.put("file", r.document().file());
        input.put("sha256", r.document().sha256());
        input.put("pages", r.document().pages().size());
        JsonJob.put(root.putObject("job"), r.job());
        Block block = r.block();
        root.put("sheets", block.printedSheets());
        root.put("leaves", block.bodyLeaves());
        root.put("covers", block.covers());
        stack(root.putObject("stack"), r.stack());
        JsonPlan.put(root.putObject("plan"), r.plan());
        JsonSplit.put(root, r.split());
        JsonRun.put(root, r.run());
        ObjectNode counts = root.putObject("verdicts");
        for (Verdict verdict : Verdict.values()) {
            counts.put(
                    Json.word(verdict),
                    r.pages().stream()
                            .filter(p -> p.verdict().verdict() == verdict)
                            .count());
        }
        pages(root.putArray("pages"), r.pages(), allPages);
        findings(root.putArray("findings"), r.findings());
        return Json.text(root);
    }

    /** What to say of a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException e) {
        ObjectNode root = Json.object();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("outcome", "unreadable");
        root.put("failed", true);
        root.putObject("input").put("file", file);
        ObjectNode problem = root.putObject("problem");
        problem.put("reason", Json.word(e.reason()));
        problem.put("message", String.valueOf(e.getMessage()));
        problem.put("remedy", e.remedy());
        return Json.text(root);
    }

    static void stack(ObjectNode node, Stack stack) {
        Json.mm(node, "nominalMm", stack.nominal());
        Json.mm(node, "minMm", stack.min());
        Json.mm(node, "maxMm", stack.max());
        node.put("weightG", stack.weightG() == null ? null : Json.rounded(stack.weightG(), 1));
        Json.strings(node, "because", stack.because());
    }

    private static void pages(ArrayNode array, List<PageReport> pages, boolean all) {
        for (PageReport p : pages) {
            if (!all && p.verdict().verdict() == Verdict.CLEAR) {
                continue;
            }
            ObjectNode node = array.addObject();
            node.put("page", p.facts().page());
            node.put("side", p.place().recto() ? "recto" : "verso");
            Json.pair(
                    node,
                    "trimMm",
                    p.facts().trimWidth().mm(),
                    p.facts().trimHeight().mm());
            node.put("boundEdge", Json.word(p.place().boundEdge()));
            node.put("verdict", Json.word(p.verdict().verdict()));
            Mark nearest = p.verdict().nearest();
            if (nearest == null) {
                node.putNull("nearest");
            } else {
                nearest(node.putObject("nearest"), nearest);
            }
            if (p.verdict().unread() != null) {
                node.put("unread", p.verdict().unread());
            }
        }
    }

    private static void nearest(ObjectNode node, Mark mark) {
        node.put("kind", Json.word(mark.kind()));
        node.put("fromBoundEdgeMm", Json.rounded(mark.nearMm()));
        Json.pair(node, "alongMm", mark.alongStartMm(), mark.alongEndMm());
        node.put("stage", Json.word(mark.stage()));
        if (!mark.words().isEmpty()) {
            node.put("words", mark.words());
        }
    }

    private static void findings(ArrayNode array, List<Finding> findings) {
        for (Finding f : findings) {
            ObjectNode node = array.addObject();
            node.put("rule", f.rule());
            node.put("severity", Json.word(f.severity()));
            node.put("pages", PageRanges.compact(f.pages()));
            node.put("message", f.message());
            node.put("remedy", f.remedy());
            if (f.measuredMm() != null) {
                node.put("measuredMm", Json.rounded(f.measuredMm()));
            }
            if (f.limitMm() != null) {
                node.put("limitMm", Json.rounded(f.limitMm()));
            }
            Finding.Span along = f.alongMm();
            if (along != null) {
                Json.pair(node, "alongMm", along.startMm(), along.endMm());
            }
        }
    }
}

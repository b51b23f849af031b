package io.bindprep.report;

import io.bindprep.job.Cover;
import io.bindprep.job.Insert;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.Trim;
import io.bindprep.paper.Stock;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The job as it was understood, as JSON. */
final class JsonJob {
    private JsonJob() {}

    static void put(ObjectNode node, Job job) {
        node.put("copies", job.copies());
        node.put("sides", Json.word(job.sides()));
        node.put("boundEdge", Json.word(job.boundEdge()));
        Trim trim = job.trim();
        if (trim == null) {
            node.putNull("trim");
        } else {
            ObjectNode size = node.putObject("trim");
            size.put("name", trim.name());
            Json.mm(size, "widthMm", trim.width());
            Json.mm(size, "heightMm", trim.height());
        }
        stock(node, job.stock());
        ObjectNode covers = node.putObject("covers");
        cover(covers, "front", job.frontCover());
        cover(covers, "back", job.backCover());
        ArrayNode inserts = node.putArray("inserts");
        for (Insert insert : job.inserts()) {
            ObjectNode one = inserts.addObject();
            one.put("pages", pages(insert.pages()));
            stock(one, insert.stock());
        }
        node.put("binding", Json.word(job.binding()));
        node.put("pitch", job.pitch());
        node.put("punch", job.punch());
        Json.mm(node, "clearMarginMm", job.clearMargin());
        Json.mm(node, "registrationMm", job.registration());
        Json.mm(node, "clearanceMm", job.clearance());
        ObjectNode overs = node.putObject("overs");
        overs.put("percent", Json.rounded(job.supply().overs().percent(), 3));
        overs.put("least", job.supply().overs().least());
        overs.put("source", job.supply().overs().source());
        node.put("failOn", Json.word(job.failOn()));
    }

    private static void cover(ObjectNode covers, String side, @Nullable Cover cover) {
        if (cover == null) {
            covers.putNull(side);
            return;
        }
        ObjectNode node = covers.putObject(side);
        PageRange printed = cover.printed();
        node.put("pages", printed == null ? null : pages(printed));
        stock(node, cover.stock());
    }

    private static void stock(ObjectNode node, Stock stock) {
        ObjectNode s = node.putObject("stock");
        s.put("name", stock.name());
        s.put("grammage", stock.grammage() == null ? null : Json.rounded(stock.grammage(), 3));
        s.put("caliperUm", Json.rounded(stock.caliperUm(), 2));
        s.put("toleranceUm", Json.rounded(stock.toleranceUm(), 2));
        s.put("source", stock.source());
    }

    private static String pages(PageRange range) {
        return range.first() == range.last() ? Integer.toString(range.first()) : range.first() + "-" + range.last();
    }
}

package io.bindprep.report;

import io.bindprep.run.Caution;
import io.bindprep.run.ElementNeed;
import io.bindprep.run.Lift;
import io.bindprep.run.Materials;
import io.bindprep.run.Run;
import io.bindprep.run.Step;
import io.bindprep.run.StockNeed;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The run as JSON: materials, lifts, assembly. */
final class JsonRun {
    private JsonRun() {}

    static void put(ObjectNode root, Run run) {
        materials(root.putObject("materials"), run.materials());
        lifts(root.putArray("lifts"), run.lifts());
        ObjectNode assembly = root.putObject("assembly");
        assembly.put("pulls", run.pulls());
        ArrayNode steps = assembly.putArray("steps");
        for (Step step : run.steps()) {
            ObjectNode one = steps.addObject();
            one.put("work", Json.word(step.work()));
            Json.strings(one, "instructions", step.instructions());
            cautions(one.putArray("cautions"), step.cautions());
        }
        cautions(assembly.putArray("cautions"), run.cautions());
    }

    private static void materials(ObjectNode node, Materials m) {
        node.put("copies", m.copies());
        Json.pair(node, "leafMm", m.leafWidth().mm(), m.leafHeight().mm());
        ArrayNode stocks = node.putArray("stocks");
        for (StockNeed need : m.stocks()) {
            ObjectNode one = stocks.addObject();
            one.put("use", Json.word(need.use()));
            one.put("stock", need.stock().name());
            one.put("kind", Json.word(need.stock().kind()));
            one.put("printed", need.printed());
            one.put("aCopy", need.aCopy());
            one.put("net", need.net());
            one.put("overs", need.overs());
            one.put("total", need.total());
        }
        ArrayNode elements = node.putArray("elements");
        for (ElementNeed need : m.elements()) {
            ObjectNode one = elements.addObject();
            one.put("method", Json.word(need.method()));
            one.put("name", need.name());
            one.put("loops", need.loops());
            Json.mm(one, "lengthMm", need.length());
            one.put("pieces", need.pieces());
            one.put("spares", need.spares());
            one.put("totalLoops", need.totalLoops());
        }
        grams(node, "copyG", m.copyG());
        grams(node, "runG", m.runG());
        Json.strings(node, "because", m.because());
    }

    private static void grams(ObjectNode node, String name, @Nullable BigDecimal grams) {
        node.put(name, grams == null ? null : Json.rounded(grams, 1));
    }

    private static void lifts(ArrayNode array, List<Lift> lifts) {
        for (Lift lift : lifts) {
            ObjectNode node = array.addObject();
            node.put("volume", lift.volume());
            node.put("firstLeaf", lift.firstLeaf());
            node.put("leaves", lift.leaves());
            node.put("cover", lift.cover());
            node.put("kind", Json.word(lift.kind()));
            Json.mm(node, "thicknessMm", lift.thickness());
            node.put("firstPage", lift.firstPage());
            node.put("lastPage", lift.lastPage());
        }
    }

    private static void cautions(ArrayNode array, List<Caution> cautions) {
        for (Caution caution : cautions) {
            array.addObject().put("text", caution.text()).put("source", caution.source());
        }
    }
}

package io.bindprep.report;

import io.bindprep.paper.Stock;
import io.bindprep.volume.Split;
import io.bindprep.volume.Volume;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The ways out of a stack too thick, as JSON: volumes, and a thinner stock. */
final class JsonSplit {
    private JsonSplit() {}

    static void put(ObjectNode root, Split split) {
        ArrayNode volumes = root.putArray("volumes");
        for (Volume volume : split.volumes()) {
            ObjectNode node = volumes.addObject();
            node.put("number", volume.number());
            node.put("firstPage", volume.firstPage());
            node.put("lastPage", volume.lastPage());
            node.put("bookmark", volume.bookmark());
            node.put("sheets", volume.block().printedSheets());
            node.put("leaves", volume.block().bodyLeaves());
            node.put("covers", volume.block().covers());
            JsonReport.stack(node.putObject("stack"), volume.stack());
            JsonPlan.put(node.putObject("plan"), volume.plan());
        }
        ObjectNode ways = root.putObject("tooThick");
        Stock thinner = split.thinner();
        ways.put("thinnerStock", thinner == null ? null : thinner.name());
        Json.strings(ways, "because", split.because());
    }
}

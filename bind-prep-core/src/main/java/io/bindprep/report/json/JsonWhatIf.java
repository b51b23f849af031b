package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.check.WhatIf;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Terms;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Effect of one way to punch, as JSON. */
record JsonWhatIf(
        @JsonPropertyDescription("whether it is the plan above")
        boolean chosen,

        @JsonPropertyDescription("id of the hole pattern") String pattern,

        @JsonPropertyDescription("the trade's name of the pitch, else the pattern's id")
        String pitchName,

        @JsonPropertyDescription("the setting of the depth stop")
        JsonDepth depth,

        @JsonPropertyDescription("size of the element; null where none takes the stack or none is known") @Nullable
        String elementName,

        @JsonPropertyDescription(
                "holes of the row; 0 where it does not fit the edge, so that no page was held against holes")
        int holes,

        @JsonPropertyDescription("binding edge to the far side of the holes, " + Terms.PUNCHING_TOLERANCE + " included")
        BigDecimal holeZoneMm,

        @JsonPropertyDescription("pages whose content the holes would cut, as ranges")
        String hitPages,

        @JsonPropertyDescription("pages with matter too near, as ranges")
        String tightPages,

        @JsonPropertyDescription("pages of which nothing is known, as ranges")
        String uncheckedPages) {
    static JsonWhatIf of(WhatIf whatIf) {
        Plan plan = whatIf.plan();
        Element element = plan.element();
        return new JsonWhatIf(
                whatIf.chosen(),
                plan.pattern(),
                plan.pitchName(),
                JsonDepth.of(plan.depth()),
                element == null ? null : element.name(),
                plan.row().holes().size(),
                Json.mm(plan.holeZone()),
                PageLists.compact(whatIf.hit()),
                PageLists.compact(whatIf.tight()),
                PageLists.compact(whatIf.unchecked()));
    }
}

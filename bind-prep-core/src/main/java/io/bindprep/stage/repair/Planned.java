package io.bindprep.stage.repair;

import io.bindprep.repair.LonePlan;
import io.bindprep.repair.MovePlan;
import io.bindprep.repair.PageRoom;
import io.bindprep.repair.Refusal;
import java.util.List;

/** A plan and what of the document it rests on. */
record Planned(
        MovePlan plan, LonePlan alone, List<PageRoom> rooms, boolean encrypted, int signatures, List<String> claims) {
    static Planned refused(Refusal refusal) {
        return new Planned(new MovePlan(List.of(), List.of(), refusal), LonePlan.NONE, List.of(), false, 0, List.of());
    }
}

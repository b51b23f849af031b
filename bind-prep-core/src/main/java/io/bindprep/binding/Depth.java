package io.bindprep.binding;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * At which setting the punch's depth stop stands.
 *
 * @param setting the setting, with the distance from the binding edge to the hole centre that it gives
 * @param outside paper between the binding edge and the holes
 * @param turnsBelow what that must stay below for pages to turn freely; null where no element is known
 * @param decidedBy what it was chosen by; null where it was only weighed
 */
public record Depth(
        DepthSetting setting,
        Length outside,
        @Nullable Length turnsBelow,
        @Nullable Decider decidedBy) {
    /** Grounds of a decision. */
    public enum Decider {
        /** The job names the setting. */
        JOB,
        /** The punch has no other. */
        PUNCH,
        /** Ring holes lie where the mechanism has them, whatever the stack. */
        PATTERN,
        /** The deepest that suits the element. */
        ELEMENT,
        /** The deepest that the punch has for a stack of that thickness. */
        THICKNESS,
        /** Deeper ones that suit would keep pages from turning. */
        TURNING,
        /** Deeper ones that suit hit more of the content. */
        CONTENT
    }

    /** Returns true if pages turn freely on the element; false too where that is not known. */
    public boolean turnsFreely() {
        return turnsBelow != null && outside.compareTo(turnsBelow) < 0;
    }

    /** Returns true if pages are known not to turn freely. */
    public boolean binds() {
        return turnsBelow != null && !turnsFreely();
    }
}

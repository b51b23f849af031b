package io.bindprep.catalogue;

import io.bindprep.unit.Length;

/**
 * One setting of a punch's depth stop that the operator can dial.
 *
 * @param name how the punch calls it ("shallow", "3")
 * @param axis bound edge to hole axis that it gives
 * @param source where the axis comes from
 */
public record DepthSetting(String name, Length axis, String source) {}

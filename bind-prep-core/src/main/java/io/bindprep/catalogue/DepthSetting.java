package io.bindprep.catalogue;

import io.bindprep.unit.Length;

/**
 * One setting of a punch's depth stop that the operator can dial.
 *
 * @param name how the punch calls it ("shallow", "3")
 * @param centre binding edge to hole centre that it gives
 * @param source where the centre comes from
 */
public record DepthSetting(String name, Length centre, String source) {}

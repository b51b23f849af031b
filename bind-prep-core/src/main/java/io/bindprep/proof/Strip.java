package io.bindprep.proof;

import java.util.List;

/**
 * Holes and zones of every page of one size and side.
 *
 * @param lengthMm length of the binding edge
 * @param zoneMm reach of the holes, tolerance included
 * @param marginMm minimum distance of print from the binding edge
 * @param holes the holes themselves
 * @param reach each hole as far as it may lie off its place
 */
public record Strip(double lengthMm, double zoneMm, double marginMm, List<Outline> holes, List<Outline> reach) {
    public Strip {
        holes = List.copyOf(holes);
        reach = List.copyOf(reach);
    }
}

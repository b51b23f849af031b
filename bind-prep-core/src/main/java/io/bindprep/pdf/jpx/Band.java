package io.bindprep.pdf.jpx;

import java.util.ArrayList;
import java.util.List;

/**
 * A subband of a resolution, with its code blocks.
 *
 * @param right 1 where it holds the high frequencies across
 * @param below 1 where it holds those down
 * @param planes most bit planes
 * @param step of quantisation; 1 where nothing is quantised
 * @param blocks those met in packets
 */
record Band(int right, int below, int x0, int y0, int x1, int y1, int planes, float step, List<CodeBlock> blocks) {
    Band(int right, int below, int x0, int y0, int x1, int y1, int planes, float step) {
        this(right, below, x0, y0, x1, y1, planes, step, new ArrayList<>());
    }
}

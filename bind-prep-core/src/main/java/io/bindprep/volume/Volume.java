package io.bindprep.volume;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.paper.Stack;

/**
 * One of the volumes that a book too thick is split into; the covers stand in each.
 *
 * @param number from 1
 * @param firstPage the first page of its body
 * @param lastPage the last page of its body
 * @param bookmark the title of the top-level bookmark that it begins with, shortened; empty where it begins with none.
 *     Hostile text
 * @param block its leaves; places are those of the whole document
 */
public record Volume(int number, int firstPage, int lastPage, String bookmark, Block block, Stack stack, Plan plan) {}

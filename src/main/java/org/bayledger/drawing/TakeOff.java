package org.bayledger.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One list of what a job needs.
 *
 * @param kind what is taken off
 * @param heading names of the columns, with their units
 * @param rows a cell is a text, a number, or null where it is not known
 */
record TakeOff(TakeOffKind kind, List<String> heading, List<List<@Nullable Object>> rows) {}

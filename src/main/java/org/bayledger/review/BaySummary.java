package org.bayledger.review;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bayledger.check.Finding;

/**
 * What the schedules of the whole job need of a bay, so that its results need not be kept.
 *
 * @param brief the bay with its items' verdicts
 * @param actions what somebody has to do about its items
 * @param extremes of the components that saw wind, by kind
 * @param notes for the shop drawings
 */
record BaySummary(
        BayResult brief,
        List<Action> actions,
        Map<ReviewResult.Component, WindExtremes.Extremes> extremes,
        List<NoteSchedule.Noted> notes) {

    /**
     * What somebody has to do about an item.
     *
     * @param finding what
     * @param pointer into the document
     * @param item the item, its verdict only
     */
    record Action(Finding finding, String pointer, ReviewItem item) {}

    /**
     * @param bay a bay's results
     * @param checked its items with the findings of their checks
     * @param pointer to the bay
     */
    static BaySummary of(BayResult bay, List<Checked> checked, String pointer) {
        BayResult brief = bay.verdictsOnly();
        List<Action> actions = new ArrayList<>();
        Map<ReviewResult.Component, WindExtremes.Extremes> extremes =
                new EnumMap<>(ReviewResult.Component.class);
        List<NoteSchedule.Noted> notes = new ArrayList<>();
        for (int i = 0; i < checked.size(); i++) {
            ReviewItem item = bay.items().get(i);
            ReviewItem verdict = brief.items().get(i);
            for (Finding finding : item.findings()) {
                add(actions, new Action(finding, finding.pointer(), verdict));
            }
            for (Finding finding : checked.get(i).findings()) {
                add(actions, new Action(finding, pointer, verdict));
            }
            WindExtremes.add(extremes, item);
            NoteSchedule.add(notes, item);
        }
        return new BaySummary(brief, actions, extremes, notes);
    }

    private static void add(List<Action> actions, Action action) {
        if (action.finding().severity() == Finding.Severity.ACTION) {
            actions.add(action);
        }
    }
}

package org.bayledger.ledger;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A walk along a chain as its rows tell it, from the first to a given number, a page at a time.
 * What is missing is not made up, and what is there twice is told twice.
 */
final class Chain implements Iterator<Chain.Link> {

    /** Revisions that are held in memory at once. */
    private static final int PAGE = 100;

    private final AuditStore store;
    private final Project project;
    private final int end;

    /** What stands at each place by now. */
    private final TreeMap<Integer, Manifest.Bay> places = new TreeMap<>();

    private final Deque<Link> page = new ArrayDeque<>();

    /** The number that was read up to: from far below 1, where nothing has to be. */
    private int read = Integer.MIN_VALUE;

    Chain(AuditStore store, Project project, int end) {
        this.store = store;
        this.project = project;
        this.end = end;
    }

    /**
     * A revision as its rows tell it.
     *
     * @param revision its own row
     * @param bays its bays in their order; none where their rows contradict themselves
     * @param fault what is wrong with the rows of its bays; null where nothing is
     */
    record Link(Revision revision, List<Manifest.Bay> bays, @Nullable String fault) {

        /** What the revision's hash has to be over. */
        Manifest manifest(Project project) {
            return revision.manifest(project, bays);
        }
    }

    @Override
    public boolean hasNext() {
        while (page.isEmpty() && read < end) {
            readOn();
        }
        return !page.isEmpty();
    }

    @Override
    public Link next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return page.remove();
    }

    private void readOn() {
        int to = store.endOfPage(project, read, end, PAGE);
        Deque<AuditStore.BayChange> changes = new ArrayDeque<>(store.changes(project, read, to));
        for (Revision revision : store.revisions(project, read, to)) {
            String fault = null;
            Set<Integer> changed = new HashSet<>();
            while (!changes.isEmpty() && changes.element().number() <= revision.number()) {
                AuditStore.BayChange change = changes.remove();
                if (change.number() < revision.number()) {
                    fault = "rows of bays belong to no revision";
                } else if (!changed.add(change.place()) || !changes(change)) {
                    fault = "a row of its bays was not recorded with it";
                }
            }
            if (!places.isEmpty() && places.lastKey() >= places.size()) {
                fault = "the places of its bays are not as they were recorded";
            }
            List<Manifest.Bay> bays = fault == null ? List.copyOf(places.values()) : List.of();
            page.add(new Link(revision, bays, fault));
        }
        read = to;
    }

    /** Lays a bay down, or takes what stood there away; says whether that changes anything. */
    private boolean changes(AuditStore.BayChange change) {
        Manifest.Bay bay = change.bay();
        Manifest.Bay before =
                bay == null ? places.remove(change.place()) : places.put(change.place(), bay);
        return bay == null ? before != null : !bay.equals(before);
    }
}

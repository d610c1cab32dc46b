package org.bayledger.review;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bayledger.check.Faults;
import org.jspecify.annotations.Nullable;

/**
 * How much work a document asks of its review, known before it begins. The unit is the check of one
 * lite with the search of its remedies, 0.7 ms of one core of an Intel Xeon; the limits keep a
 * review under a minute of such a core, and its answer under some hundred megabytes. On a larger
 * machine the system property {@code bayledger.review.most-lites} raises both.
 */
final class ReviewWork {

    /** Lites that one review may hold; what it answers grows with them. */
    static final int MOST_LITES = Integer.getInteger("bayledger.review.most-lites", 20_000);

    /** Units of work that one review may ask for. */
    static final int MOST = 4 * MOST_LITES;

    /** A climate of a sealed unit, in which each pane's plate is solved directly. */
    private static final int CLIMATE = 12;

    private ReviewWork() {}

    static void require(List<Bay> bays, List<GlassType> glassTypes, Faults faults) {
        Map<String, Integer> lite =
                glassTypes.stream()
                        .collect(
                                Collectors.toMap(
                                        GlassType::id, ReviewWork::ofLite, (one, again) -> one));
        long lites = 0;
        long work = 0;
        for (Bay bay : bays) {
            long grid = (long) bay.columns().size() * bay.rows().size();
            lites += grid;
            int usual = ofLite(lite, bay.glassType());
            work += grid * usual + ofVertical(bay) * (bay.columns().size() + 1);
            if (bay.lites() != null) {
                for (LiteChange change : bay.lites()) {
                    work +=
                            change.glassType() == null
                                    ? 0
                                    : ofLite(lite, change.glassType()) - usual;
                }
            }
        }
        faults.require(
                lites <= MOST_LITES,
                "/bays",
                "hold "
                        + lites
                        + " lites, and one review takes on at most "
                        + MOST_LITES
                        + "; split the document, by elevation for example");
        faults.require(
                work <= MOST,
                "/bays",
                "ask for "
                        + work
                        + " units of work, and one review takes on at most "
                        + MOST
                        + ", where a lite is 1 and "
                        + CLIMATE
                        + " more for each climate of its sealed unit, and a vertical is 1 and 1"
                        + " more for each of its anchors and stack joints; split the document, by"
                        + " elevation for example");
    }

    private static int ofLite(GlassType glass) {
        return glass.sealedUnit() == null ? 1 : 1 + CLIMATE * glass.sealedUnit().service().size();
    }

    private static int ofLite(Map<String, Integer> known, @Nullable String glassType) {
        return glassType == null ? 1 : known.getOrDefault(glassType, 1);
    }

    private static long ofVertical(Bay bay) {
        return 1L + size(bay.anchors()) + size(bay.stackJoints());
    }

    private static int size(@Nullable List<?> list) {
        return list == null ? 0 : list.size();
    }
}

package org.bayledger.framing;

import jakarta.validation.constraints.Size;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.bayledger.check.Fault;
import org.bayledger.check.Faults;
import org.bayledger.check.FaultsException;
import org.bayledger.check.Load;
import org.bayledger.check.Pointer;
import org.jspecify.annotations.Nullable;

/**
 * Which of several sections to choose for a wall.
 *
 * @param candidates the sections
 * @param zones the wind schedule: each zone with both signs
 * @param members the spans and spacings that each zone has
 * @param deflectionRule published rule for deflection; absent: IBC
 * @param reinforcement steel that may be put into a section where it fails alone; absent: what
 *     reinforcement would save is not looked at
 */
public record SelectionRequest(
        @Size(min = 1, max = 200) List<SectionCandidate> candidates,
        @Size(min = 1, max = 50) List<SelectionZone> zones,
        @Size(min = 1, max = 50) List<SelectionMember> members,
        @Nullable DeflectionRule deflectionRule,
        @Nullable SelectionReinforcement reinforcement) {

    private static final String SECTION = "/section";

    /**
     * Members with all their supports, times sections, times zones, that one request may ask for:
     * some 20 s of one core of an Intel Xeon, with the search for steel.
     */
    private static final long MOST = 500_000;

    public SelectionRequest {
        candidates = List.copyOf(candidates);
        zones = List.copyOf(zones);
        members = List.copyOf(members);
        Faults faults = new Faults();
        long supports = members.stream().mapToLong(member -> member.supports().size()).sum();
        faults.require(
                supports * candidates.size() * zones.size() <= MOST,
                "",
                "asks for too much at once: the supports of all members, times candidates, times"
                        + " zones, must be at most "
                        + MOST
                        + "; ask for fewer candidates or zones at a time");
        unique(candidates, SectionCandidate::id, "/candidates", "/id", faults);
        Set<String> names = unique(zones, SelectionZone::zone, "/zones", "/zone", faults);
        unique(members, SelectionMember::id, "/members", "/id", faults);
        for (int i = 0; i < members.size(); i++) {
            List<String> stands = members.get(i).zones();
            String pointer = Pointer.child("/members", i);
            for (int j = 0; stands != null && j < stands.size(); j++) {
                faults.require(
                        names.contains(stands.get(j)),
                        Pointer.child(pointer + "/zones", j),
                        "is not a zone of this request");
            }
        }
        for (int i = 0; i < zones.size(); i++) {
            String zone = zones.get(i).zone();
            faults.require(
                    members.stream().anyMatch(member -> member.standsIn(zone)),
                    Pointer.child("/zones", i),
                    "has no member; give members without zones, or name this one");
        }
        for (int i = 0; i < candidates.size() && !zones.isEmpty(); i++) {
            tryOut(members, candidates.get(i).section(), zones.get(0).load(), i, faults);
        }
        faults.throwIfAny();
    }

    /**
     * Collects what the check of a member would refuse, at the place where it stands here: of each
     * section once, of each member with the first section.
     */
    private static void tryOut(
            List<SelectionMember> members,
            Section section,
            Load load,
            int candidate,
            Faults faults) {
        Set<Fault> ofSection = new LinkedHashSet<>();
        for (int i = 0; i < members.size(); i++) {
            try {
                members.get(i).with(section, load, null);
            } catch (FaultsException refused) {
                for (Fault fault : refused.faults()) {
                    if (fault.pointer().startsWith(SECTION)) {
                        ofSection.add(fault);
                    } else if (candidate == 0) {
                        faults.addAll(Pointer.child("/members", i), List.of(fault));
                    }
                }
            }
        }
        faults.addAll(Pointer.child("/candidates", candidate), List.copyOf(ofSection));
    }

    private static <T> Set<String> unique(
            List<T> list, Function<T, String> name, String pointer, String field, Faults faults) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < list.size(); i++) {
            faults.require(
                    names.add(name.apply(list.get(i))),
                    Pointer.child(pointer, i) + field,
                    "is given twice");
        }
        return names;
    }
}

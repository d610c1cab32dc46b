package org.bayledger.wind;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bayledger.check.Faults;
import org.jspecify.annotations.Nullable;

/**
 * Wind pressures on the walls of a building.
 *
 * @param site the building and its wind climate; it may be left out where pressures are specified
 * @param components the parts of the wall whose pressures are asked for
 * @param specifiedPressures pressures that come with the job and are used instead of computed ones;
 *     where there is a site they are compared with its standard's
 */
public record WindRequest(
        @JsonUnwrapped @Nullable Site site,
        @NotEmpty @Size(max = 2000) List<Component> components,
        @Nullable SpecifiedPressures specifiedPressures) {

    public WindRequest {
        components = List.copyOf(components);
        Faults faults = new Faults();
        if (site == null && specifiedPressures == null) {
            faults.malformed(
                    "/standard",
                    "is required, with the rest of the site, where no specifiedPressures are given");
        }
        if (specifiedPressures != null) {
            specified(faults, specifiedPressures, site);
        }
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            faults.require(
                    ids.add(component.id()),
                    "/components/" + i + "/id",
                    "names a component that is already in the list");
            faults.require(
                    site == null || component.height() <= site.greatestHeight(),
                    "/components/" + i + "/height",
                    "exceeds the height up to which the standard defines its profile");
        }
        faults.throwIfAny();
    }

    private static void specified(
            Faults faults, SpecifiedPressures specified, @Nullable Site site) {
        String at = "/specifiedPressures/pressures";
        for (int i = 0; i < specified.pressures().size(); i++) {
            faults.require(
                    specified.pressures().get(i).elevation() == null,
                    at + "/" + i + "/elevation",
                    "belongs to a review, whose elevations it names");
        }
        faults.require(
                site == null || specified.scheme() == ZoneScheme.of(site.standard()),
                at,
                "have zones that the site's standard does not have");
    }
}

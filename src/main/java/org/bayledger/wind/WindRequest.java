package org.bayledger.wind;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.Size;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bayledger.check.Faults;

/**
 * Wind pressures on the walls of a building.
 *
 * @param site the building and its wind climate
 * @param components the parts of the wall whose pressures are asked for
 */
public record WindRequest(
        @JsonUnwrapped Site site, @NotEmpty @Size(max = 2000) List<Component> components) {

    public WindRequest {
        components = List.copyOf(components);
        Faults faults = new Faults();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            faults.require(
                    ids.add(component.id()),
                    "/components/" + i + "/id",
                    "names a component that is already in the list");
            faults.require(
                    component.height() <= site.greatestHeight(),
                    "/components/" + i + "/height",
                    "exceeds the height up to which the standard defines its profile");
        }
        faults.throwIfAny();
    }
}

package org.bayledger.mechanics;

/**
 * The flexural rigidity from a place on, up to the next step or the beam's end.
 *
 * @param from where it begins, m from the beam's start
 * @param rigidity E I, N m2, above zero
 */
public record BeamRigidityStep(double from, double rigidity) {
    public BeamRigidityStep {
        BeamModel.requireFinite("start of a rigidity step", from);
        BeamModel.requireFinite("flexural rigidity", rigidity);
        if (rigidity <= 0) {
            throw new IllegalArgumentException(
                    "the flexural rigidity must be above zero, but is " + rigidity + " N m2");
        }
    }
}

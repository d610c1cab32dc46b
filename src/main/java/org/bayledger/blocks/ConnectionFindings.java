package org.bayledger.blocks;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Finding;
import org.bayledger.check.Reporting;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What could not be looked at of twist, end connections, prop and blocks, said in sentences. */
final class ConnectionFindings {

    private static final double SAME_WIDTH = 1e-6;

    private ConnectionFindings() {}

    /** On the horizontal beside its bending. */
    static List<Finding> ofMember(BlockSupport support) {
        List<Finding> findings = new ArrayList<>();
        boolean twist = support.torsionalRigidity() != null && support.eccentricity() != null;
        if (!twist) {
            boolean constant = support.torsionConstant() == null;
            findings.add(
                    Finding.note(
                            "ROTATION_NOT_CHECKED",
                            constant
                                    ? "/support/torsionConstant"
                                    : support.eccentricity() == null
                                            ? "/support/eccentricity"
                                            : "/support/shearModulus",
                            "How far the horizontal turns under glass that stands off its shear"
                                    + " center was not looked at: "
                                    + (constant
                                            ? "no torsion constant was given."
                                            : support.eccentricity() == null
                                                    ? "no eccentricity of the glass was given."
                                                    : "neither shear modulus nor elastic modulus"
                                                            + " was given.")));
        } else if (support.shearModulus() == null) {
            findings.add(
                    Finding.info(
                            "SHEAR_MODULUS_OF_ALUMINUM",
                            "/support/shearModulus",
                            "No shear modulus was given; that of aluminum was taken from the"
                                    + " elastic modulus with a Poisson's ratio of 0.33."));
        }
        if (support.endReactionAllowable() == null) {
            findings.add(
                    Finding.note(
                            "END_CONNECTION_NOT_CHECKED",
                            "/support/endReactionAllowable",
                            "The forces on the shear blocks at the ends of the horizontal and on"
                                    + " their fasteners were not held against anything: nothing was"
                                    + " given that they may carry."));
        } else if (twist && support.endTorqueAllowable() == null) {
            findings.add(
                    Finding.note(
                            "END_TORQUE_NOT_CHECKED",
                            "/support/endTorqueAllowable",
                            "The torque on the shear blocks at the ends of the horizontal was not"
                                    + " held against anything: nothing was given that they may"
                                    + " carry."));
        }
        return findings;
    }

    /** On the blocks themselves. */
    static List<Finding> ofBlocks(SettingBlocksRequest request, Reporting reporting) {
        List<Finding> findings = new ArrayList<>();
        Double width = request.blockWidth();
        if (tooNarrow(request) && width != null && request.glass() != null) {
            findings.add(
                    Finding.action(
                            "BLOCK_NARROWER_THAN_GLASS",
                            "/blockWidth",
                            "The blocks are "
                                    + reporting.text(Dimension.LENGTH, width)
                                    + " wide and the glass is "
                                    + reporting.text(Dimension.LENGTH, request.glass().thickness())
                                    + " thick: part of it stands on nothing. Take blocks as wide as"
                                    + " the glass is thick."));
        }
        if (request.blockPressureAllowable() == null) {
            findings.add(
                    Finding.note(
                            "BLOCK_PRESSURE_NOT_CHECKED",
                            "/blockPressureAllowable",
                            "The bearing pressure on the blocks was not held against anything:"
                                    + " nothing was given that they may bear."));
        } else if (width == null && request.glass() == null) {
            findings.add(
                    Finding.action(
                            "BLOCK_WIDTH_NOT_GIVEN",
                            "/blockWidth",
                            "Neither the width of the blocks nor the glass was given, so that the"
                                    + " pressure on the blocks is not known."));
        }
        return findings;
    }

    /** Whether the blocks leave part of the glass without support. */
    static boolean tooNarrow(SettingBlocksRequest request) {
        return request.blockWidth() != null
                && request.glass() != null
                && request.blockWidth() < request.glass().thickness() - SAME_WIDTH;
    }

    /** Whether the pressure is to be judged and can't be. */
    static boolean pressureUnknown(SettingBlocksRequest request) {
        return request.blockPressureAllowable() != null
                && request.blockWidth() == null
                && request.glass() == null;
    }

    /** The prop is somebody else's. */
    static Finding prop(@Nullable Quantity reaction, Reporting reporting) {
        return Finding.note(
                "PROP_NOT_CHECKED",
                "/support/midSupport",
                "The prop under the middle of the horizontal"
                        + (reaction == null
                                ? ""
                                : " carries "
                                        + reporting.text(Dimension.FORCE, reaction.si())
                                        + "; it")
                        + " and what it stands on were not checked. It must not yield, nor press on"
                        + " glass.");
    }
}

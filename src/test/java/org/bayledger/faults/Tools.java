package org.bayledger.faults;

import static org.assertj.core.api.Assertions.fail;

import org.junit.jupiter.api.Assumptions;

/**
 * Tools that a plain machine lacks: a test that needs one is skipped with a word, and fails where
 * the property bayledger.test.tools says "required", as on the CI machine.
 */
public final class Tools {

    private Tools() {}

    /** Goes on only where a tool is there. */
    public static void require(String tool, boolean there) {
        if (!there && "required".equals(System.getProperty("bayledger.test.tools"))) {
            fail("this machine has no " + tool + ", and bayledger.test.tools is required");
        }
        Assumptions.assumeTrue(there, () -> "skipped: this machine has no " + tool);
    }
}

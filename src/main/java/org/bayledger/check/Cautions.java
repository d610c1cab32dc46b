package org.bayledger.check;

import java.util.ArrayList;
import java.util.List;

/** The cautions that every answer carries. */
public final class Cautions {

    private static final List<String> GENERAL =
            List.of(
                    "These results support, and never replace, the judgement of a licensed"
                            + " professional.",
                    "The local building code and the authority having jurisdiction govern.",
                    "Follow the manufacturers' instructions for every product used.");

    private Cautions() {}

    /** The general cautions, followed by those of one check. */
    public static List<String> with(String... own) {
        List<String> all = new ArrayList<>(GENERAL);
        all.addAll(List.of(own));
        return List.copyOf(all);
    }
}

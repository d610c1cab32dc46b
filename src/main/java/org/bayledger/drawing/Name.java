package org.bayledger.drawing;

import java.util.Collection;
import java.util.List;

/** The name of an item among others: it stays in one line where it is short enough for a cell. */
record Name(String text) {

    private static final int SHORT = 24;

    /** Its style. */
    String tone() {
        return text.length() <= SHORT ? "name" : "long";
    }

    static List<Name> all(Collection<String> names) {
        return names.stream().map(Name::new).toList();
    }
}

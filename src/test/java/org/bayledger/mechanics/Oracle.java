package org.bayledger.mechanics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Rows of the files of answers that finite elements gave: a name, then numbers. */
final class Oracle {

    private final String name;
    private final double[] values;

    private Oracle(String name, double[] values) {
        this.name = name;
        this.values = values;
    }

    String name() {
        return name;
    }

    double[] values() {
        return values;
    }

    static List<Oracle> rows(String resource) throws IOException {
        List<Oracle> rows = new ArrayList<>();
        try (InputStream stream = Oracle.class.getResourceAsStream(resource)) {
            assertThat(stream).isNotNull();
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.lines().toList()) {
                if (line.startsWith("#") || line.startsWith("name")) {
                    continue;
                }
                String[] f = line.split(",", -1);
                double[] v = new double[f.length - 1];
                for (int i = 1; i < f.length; i++) {
                    v[i - 1] = Double.parseDouble(f[i]);
                }
                rows.add(new Oracle(f[0], v));
            }
        }
        return rows;
    }
}

package org.bayledger.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The boundaries of the house, each proven by a breach that is planted for it. */
class ArchitectureTest {

    private static final String SERVICE = "org.bayledger";
    private static final String PLANTED = "org.bayledger.architecture.planted";

    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages(SERVICE);
    private static final JavaClasses BREACHES = new ClassFileImporter().importPackages(PLANTED);

    private static final Map<String, ArchRule> RULES =
            new Rules(SERVICE).all(rooms(HOUSE, SERVICE));
    private static final Map<String, ArchRule> RULES_OF_BREACHES =
            new Rules(PLANTED).all(rooms(BREACHES, PLANTED));

    static Stream<String> rules() {
        return RULES.keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void theHouseKeeps(String rule) {
        RULES.get(rule).check(HOUSE);
    }

    static Stream<String> breaches() {
        return RULES_OF_BREACHES.keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("breaches")
    void aPlantedBreachIsSeen(String rule) {
        assertThat(RULES_OF_BREACHES.get(rule).evaluate(BREACHES).hasViolation()).isTrue();
    }

    @Test
    void everyRuleHasAPlantedBreachAndNoRoomIsOutsideTheRules() {
        assertThat(RULES_OF_BREACHES.keySet()).containsAll(RULES.keySet());
        Set<String> known = new TreeSet<>(Rules.ORDER);
        known.addAll(Rules.ROOMS);
        assertThat(known).containsAll(rooms(HOUSE, SERVICE));
        assertThat(rooms(HOUSE, SERVICE)).containsAll(Rules.ROOMS);
    }

    /** Each single breach is seen, not only the first one of its rule. */
    @Test
    void everyPlantedClassBreaksARule() {
        String seen =
                RULES_OF_BREACHES.values().stream()
                        .map(rule -> rule.evaluate(BREACHES).getFailureReport().toString())
                        .collect(Collectors.joining("\n"));
        assertThat(BREACHES)
                .filteredOn(type -> type.getSimpleName().startsWith("Breach"))
                .isNotEmpty()
                .allSatisfy(type -> assertThat(seen).contains(type.getName()));
    }

    private static Set<String> rooms(JavaClasses classes, String root) {
        return classes.stream()
                .map(type -> type.getPackageName())
                .filter(name -> name.startsWith(root + "."))
                .map(name -> name.substring(root.length() + 1).replaceFirst("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}

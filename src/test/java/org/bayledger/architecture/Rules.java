package org.bayledger.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/**
 * The boundaries of the house, for a root package: the service's own, or one with planted breaches.
 *
 * @param root the root package
 */
record Rules(String root) {

    /** From the bottom up; a package depends only on those before it. */
    static final List<String> ORDER =
            List.of(
                    "quantity",
                    "mechanics",
                    "check",
                    "glazing",
                    "checks",
                    "review",
                    "ledger",
                    "drawing",
                    "platform");

    /** The rooms that stand at the place "checks" and don't know one another. */
    static final List<String> ROOMS =
            List.of("wind", "glass", "framing", "anchorage", "blocks", "seals");

    private static final Set<String> RANDOM =
            Set.of(
                    "java.util.Random",
                    "java.util.SplittableRandom",
                    "java.util.concurrent.ThreadLocalRandom",
                    "java.security.SecureRandom");

    /** Every rule by a name, over packages that exist. */
    Map<String, ArchRule> all(Set<String> present) {
        Map<String, ArchRule> rules = new LinkedHashMap<>();
        for (String lower : present) {
            if (!ORDER.contains(lower) && !ROOMS.contains(lower)) {
                continue;
            }
            String[] above = above(lower).stream().map(this::in).toArray(String[]::new);
            if (above.length > 0) {
                rules.put(
                        lower + " depends only on what is below it",
                        noClasses()
                                .that()
                                .resideInAPackage(in(lower))
                                .should()
                                .dependOnClassesThat()
                                .resideInAnyPackage(above));
            }
        }
        rules.put("only endpoints, ledger and platform see Spring", springIsAtTheEdge());
        rules.put("calculations import only what mathematics needs", calculationsAreBare());
        rules.put("drawings import only what mathematics and XML need", drawingsAreBare());
        rules.put("calculations have no clock, randomness or I/O", calculationsArePure());
        rules.put("every package is null-marked", packagesAreNullMarked());
        rules.replaceAll((name, rule) -> rule.as(name).allowEmptyShould(false));
        return rules;
    }

    /** The rooms above a room, and for a check room the other check rooms. */
    private static List<String> above(String room) {
        boolean check = ROOMS.contains(room);
        int place = ORDER.indexOf(check ? "checks" : room);
        Stream<String> later =
                ORDER.stream()
                        .skip(place + 1L)
                        .flatMap(name -> name.equals("checks") ? ROOMS.stream() : Stream.of(name));
        Stream<String> beside =
                check ? ROOMS.stream().filter(other -> !other.equals(room)) : Stream.of();
        return Stream.concat(beside, later).toList();
    }

    private String in(String room) {
        return root + "." + room + "..";
    }

    private DescribedPredicate<JavaClass> edge() {
        return describe(
                "endpoints, ledger and platform",
                type ->
                        type.getSimpleName().endsWith("Endpoint")
                                || type.getName().contains("Endpoint$")
                                || resideInAPackage(in("ledger")).test(type)
                                || resideInAPackage(in("platform")).test(type)
                                || type.getPackageName().equals(root));
    }

    private DescribedPredicate<JavaClass> calculations() {
        return describe("calculations", type -> !edge().test(type));
    }

    private ArchRule springIsAtTheEdge() {
        return noClasses()
                .that(calculations())
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.springframework..", "jakarta.servlet..", "org.slf4j..");
    }

    private ArchRule calculationsAreBare() {
        DescribedPredicate<JavaClass> readers =
                describe(
                        "units and bodies",
                        type ->
                                resideInAPackage(in("quantity")).test(type)
                                        || resideInAPackage(in("check")).test(type));
        DescribedPredicate<JavaClass> drawings = resideInAPackage(in("drawing"));
        return classes()
                .that(
                        calculations()
                                .and(DescribedPredicate.not(readers))
                                .and(DescribedPredicate.not(drawings)))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(bare());
    }

    /**
     * Drawings write XML with what Java has for it, CSV and pages with their libraries; nothing
     * else does.
     */
    private ArchRule drawingsAreBare() {
        return classes()
                .that(calculations())
                .and()
                .resideInAPackage(in("drawing"))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        Stream.concat(
                                        Stream.of(bare()),
                                        Stream.of(
                                                "javax.xml.stream..",
                                                "org.apache.commons.csv..",
                                                "com.samskivert.mustache..",
                                                "com.openhtmltopdf..",
                                                "org.apache.pdfbox..",
                                                "org.dhatim.fastexcel.."))
                                .toArray(String[]::new));
    }

    private String[] bare() {
        return new String[] {
            root + "..",
            "org.bayledger..",
            "java..",
            "org.hipparchus..",
            "org.jspecify..",
            "jakarta.validation.constraints..",
            "com.fasterxml.jackson.annotation.."
        };
    }

    private ArchRule calculationsArePure() {
        return noClasses()
                .that(calculations())
                .should()
                .callCodeUnitWhere(describe("the answer differs from run to run", Rules::isImpure))
                .orShould()
                .dependOnClassesThat(
                        describe(
                                "random, file, network or database",
                                type ->
                                        RANDOM.contains(type.getName())
                                                || type.getPackageName().startsWith("java.sql")
                                                || type.getPackageName().startsWith("java.net")
                                                || type.getPackageName().startsWith("java.nio.file")
                                                || type.getName().equals("java.io.File")));
    }

    private static boolean isImpure(JavaCall<?> call) {
        String owner = call.getTargetOwner().getName();
        String name = call.getName();
        return (owner.startsWith("java.time.") && (name.equals("now") || name.startsWith("system")))
                || (owner.equals("java.lang.System")
                        && Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty")
                                .contains(name))
                || (owner.equals("java.lang.Math") && name.equals("random"))
                || (owner.equals("java.util.UUID") && name.equals("randomUUID"));
    }

    private static ArchRule packagesAreNullMarked() {
        return classes()
                .should(
                        new ArchCondition<JavaClass>("be in a package that is @NullMarked") {
                            @Override
                            public void check(JavaClass type, ConditionEvents events) {
                                boolean marked =
                                        type.getPackage().isAnnotatedWith(NullMarked.class);
                                events.add(
                                        new SimpleConditionEvent(
                                                type,
                                                marked,
                                                type.getName()
                                                        + " is in a package without @NullMarked"));
                            }
                        });
    }
}

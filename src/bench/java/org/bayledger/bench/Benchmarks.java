package org.bayledger.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs the benchmarks and prints one table: what, target, median, and how often the target is met.
 * Rates are those of one thread, so of one core.
 */
public final class Benchmarks {

    /** What is measured as a whole, and prints its own lines. */
    private interface Measured {
        void run() throws IOException;
    }

    private static final Map<String, Measured> WHOLES = new LinkedHashMap<>();

    static {
        WHOLES.put(EngineReview.NAME, EngineReview::run);
        WHOLES.put(ServiceLoad.NAME, ServiceLoad::run);
        WHOLES.put(ServiceStart.NAME, ServiceStart::run);
        WHOLES.put(ServiceMemory.NAME, ServiceMemory::run);
        WHOLES.put(ServiceInstances.NAME, ServiceInstances::run);
        WHOLES.put(LedgerGrowth.NAME, LedgerGrowth::run);
        WHOLES.put(LedgerRevisions.NAME, LedgerRevisions::run);
        WHOLES.put(LedgerStorage.NAME, LedgerStorage::run);
    }

    private Benchmarks() {}

    /** Takes a part of a benchmark's name; "." runs all. */
    public static void main(String[] arguments) throws RunnerException, IOException {
        String selection = arguments.length == 0 ? "." : arguments[0];
        System.out.println(machine());
        System.out.println(
                "running; two minutes for what is timed, ten to twenty for service and ledger ...");
        for (Map.Entry<String, Measured> whole : WHOLES.entrySet()) {
            if (selected(whole.getKey(), selection)) {
                whole.getValue().run();
            }
        }
        if (WHOLES.containsKey(selection)) {
            return;
        }
        List<RunResult> results =
                new ArrayList<>(
                        new Runner(
                                        new OptionsBuilder()
                                                .include(
                                                        "(?i)org\\.bayledger\\.bench\\..*"
                                                                + selection)
                                                .verbosity(VerboseMode.SILENT)
                                                .shouldFailOnError(true)
                                                .build())
                                .run());
        System.out.printf("%n%-66s %14s %14s %8s%n", "benchmark", "target", "median", "ratio");
        for (RunResult result : results) {
            print(result);
        }
        System.out.println(
                "ratio: measured over target for rates, target over measured for times; above 1"
                        + " meets the target");
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().endsWith("." + FiniteElements.COMPARED)) {
                compare(result);
            }
        }
    }

    private static boolean selected(String name, String selection) {
        return Pattern.compile(selection, Pattern.CASE_INSENSITIVE).matcher(name).find();
    }

    private static void print(RunResult result) {
        BenchmarkParams parameters = result.getParams();
        String name =
                parameters.getBenchmark().substring(Benchmarks.class.getPackageName().length() + 1);
        for (String key : parameters.getParamsKeys()) {
            name += " " + key + "=" + parameters.getParam(key);
        }
        double median = median(result);
        boolean rate = parameters.getMode() == Mode.Throughput;
        double target = rate ? Targets.rate(parameters.getBenchmark()) : Targets.PLATE_MILLISECONDS;
        System.out.printf(
                Locale.ROOT,
                rate ? "%-66s %,12.0f/s %,12.0f/s %8.2f%n" : "%-66s %11.1f ms %11.2f ms %8.2f%n",
                name,
                target,
                median,
                rate ? median / target : target / median);
    }

    /** The direct solution against finite elements on the same plate, in the same session. */
    private static void compare(RunResult result) throws IOException {
        String plate = result.getParams().getParam(PlateBenchmark.PLATE);
        if (!plate.equals(FiniteElements.PLATE)) {
            return;
        }
        double seconds = FiniteElements.seconds();
        if (Double.isNaN(seconds)) {
            System.out.println(
                    "finite elements: not installed: apt-get install calculix-ccx python3");
        } else {
            System.out.printf(
                    Locale.ROOT,
                    "finite elements (ccx) on %s: %.1f s; the direct solution is %,.0f times as"
                            + " fast%n",
                    plate,
                    seconds,
                    1000.0 * seconds / median(result));
        }
    }

    private static double median(RunResult result) {
        if (result.getParams().getMode() == Mode.SampleTime) {
            return result.getPrimaryResult().getStatistics().getPercentile(50.0);
        }
        double[] scores =
                result.getBenchmarkResults().stream()
                        .flatMap(b -> b.getIterationResults().stream())
                        .map(IterationResult::getPrimaryResult)
                        .mapToDouble(r -> r.getScore())
                        .sorted()
                        .toArray();
        return (scores[(scores.length - 1) / 2] + scores[scores.length / 2]) / 2.0;
    }

    private static String machine() throws IOException {
        Path file = Path.of("/proc/cpuinfo");
        String model = System.getProperty("os.arch");
        if (Files.isReadable(file)) {
            model =
                    Arrays.stream(Files.readString(file, StandardCharsets.UTF_8).split("\n"))
                            .filter(line -> line.startsWith("model name"))
                            .map(line -> line.substring(line.indexOf(':') + 1).strip())
                            .findFirst()
                            .orElse(model);
        }
        return String.format(
                Locale.ROOT,
                "machine: %s, %d cores, load average %.1f; %s %s; %s",
                model,
                Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                System.getProperty("java.vm.name"),
                System.getProperty("java.vm.version"),
                System.getProperty("os.name"));
    }
}

package boltlore.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/** Runs every measurement of this package, or those whose names match the first argument, and prints one table. */
public final class Benchmarks {

    private static final String ROW = "%-22s %-22s %10s %10s %10s %10s%n";

    private Benchmarks() {}

    public static void main(String... names) throws RunnerException {
        String wanted = names.length == 0 ? "boltlore.benchmark" : names[0];
        System.err.println("Measuring; under three minutes on two quiet cores.");
        List<RunResult> results = new ArrayList<>(new Runner(new OptionsBuilder()
                        .include(wanted)
                        .verbosity(VerboseMode.SILENT)
                        .shouldFailOnError(true)
                        .build())
                .run());
        System.out.printf(ROW, "milliseconds", "of", "mean", "95 of 100", "worst", "measured");
        results.forEach(Benchmarks::print);
    }

    private static void print(RunResult result) {
        String[] name = result.getParams().getBenchmark().split("\\.", -1);
        String measured = name[name.length - 2].replace("Benchmark", "") + " " + name[name.length - 1];
        String of = result.getParams().getParamsKeys().stream()
                .map(result.getParams()::getParam)
                .collect(Collectors.joining(", "));
        Statistics times = result.getPrimaryResult().getStatistics();
        System.out.printf(
                ROW,
                measured,
                of,
                shown(times.getMean()),
                shown(times.getPercentile(95)),
                shown(times.getMax()),
                times.getN());
    }

    private static String shown(double milliseconds) {
        return String.format(Locale.ROOT, "%.3f", milliseconds);
    }
}

package boltlore.benchmark;

import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs every measurement of this package, or those whose names match the first argument. */
public final class Benchmarks {

    private Benchmarks() {}

    public static void main(String... names) throws RunnerException {
        String wanted = names.length == 0 ? "boltlore.benchmark" : names[0];
        new Runner(new OptionsBuilder().include(wanted).build()).run();
    }
}

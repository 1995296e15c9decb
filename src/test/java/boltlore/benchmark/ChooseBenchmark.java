package boltlore.benchmark;

import boltlore.catalogue.Family;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.CrowdedFamily;
import boltlore.choosing.Walk;
import boltlore.proof.DemoFamily;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All values of every option after each choice of whole interviews: the sample percentiles hold the worst of them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ChooseBenchmark {

    /** The demo van, or a made-up family by its options and limits. */
    @Param({"pannier-van", "500 and 3000", "1500 and 4000"})
    private String family = "pannier-van";

    private Walk walk = walk();
    private ChoiceState.Sound seen = walk.look();

    private Walk walk() {
        return new Walk(made(), 20261125);
    }

    private Family made() {
        return switch (family) {
            case "500 and 3000" -> CrowdedFamily.of(500, 5, 3000, 1);
            case "1500 and 4000" -> CrowdedFamily.of(1500, 2, 4000, 1);
            default -> DemoFamily.catalogue().family(family);
        };
    }

    @Setup
    public void begin() {
        walk = walk();
        seen = walk.look();
    }

    @Setup(Level.Invocation)
    public void choose() {
        walk.choose(seen);
    }

    @Benchmark
    public ChoiceState.Sound values() {
        seen = walk.look();
        return seen;
    }
}

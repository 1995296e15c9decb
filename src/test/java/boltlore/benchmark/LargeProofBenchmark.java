package boltlore.benchmark;

import boltlore.catalogue.Catalogue;
import boltlore.logic.Count;
import boltlore.logic.OrderCounter;
import boltlore.proof.DemoFamily;
import boltlore.proof.FamilyProof;
import boltlore.proof.GeneratedFamily;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All proofs of made-up families by their size, and counting their orders, in a gigabyte: the first run in a process. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1g")
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class LargeProofBenchmark {

    @Param({"1000", "5000"})
    private int lines = 500;

    private Catalogue catalogue = made();

    private Catalogue made() {
        return GeneratedFamily.of(lines, 60, 120, 1);
    }

    @Setup
    public void make() {
        catalogue = made();
    }

    @Benchmark
    public FamilyProof proofs() {
        return DemoFamily.prove(catalogue, "van");
    }

    @Benchmark
    public Count counting() {
        return new OrderCounter(catalogue.family("van")).all();
    }
}

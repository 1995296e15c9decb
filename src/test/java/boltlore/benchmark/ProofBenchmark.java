package boltlore.benchmark;

import boltlore.catalogue.Catalogue;
import boltlore.proof.DemoFamily;
import boltlore.proof.FamilyProof;
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

/** All proofs of the demo families: the first run in a process, and later ones. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ProofBenchmark {

    @Param({"pannier-van", "stook-pickup"})
    private String family = "";

    private Catalogue catalogue = DemoFamily.catalogue();

    @Setup
    public void read() {
        catalogue = DemoFamily.catalogue();
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Fork(2)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    public FamilyProof cold() {
        return DemoFamily.prove(catalogue, family);
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Fork(1)
    @Warmup(iterations = 2, time = 1)
    @Measurement(iterations = 3, time = 1)
    public FamilyProof warm() {
        return DemoFamily.prove(catalogue, family);
    }
}

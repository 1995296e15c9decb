package boltlore.benchmark;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Option;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.order.LeftOut;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
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

/** One order resolved, warm, over families of growing size: the sample percentiles hold the median. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ResolveBenchmark {

    private static final String FAMILY = "pannier-van";
    private static final int ORDERS = 100;

    @Param({"330", "1000", "5000"})
    private int lines;

    private Resolver resolver = new RuleResolver(demo());
    private final List<Choices> orders = new ArrayList<>();
    private int next;

    private static Catalogue demo() {
        if (CatalogueReader.read(Path.of("catalog")) instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new IllegalStateException("Run it in the project's folder");
    }

    @Setup
    public void grow() {
        Catalogue grown = GrownFamily.of(demo(), FAMILY, lines);
        resolver = new RuleResolver(grown);
        Random random = new Random(20261125);
        while (orders.size() < ORDERS) {
            Choices choices = Choices.of(grown.family(FAMILY), Map.of());
            for (Option option : grown.family(FAMILY).options()) {
                int value = random.nextInt(option.values().size());
                choices = choices.with(option.name(), option.values().get(value).value());
            }
            if (Resolver.brokenLimits(choices).isEmpty()) {
                orders.add(choices);
            }
        }
    }

    @Benchmark
    public Outcome<Resolution> resolve() {
        next = (next + 1) % ORDERS;
        return resolver.resolve(orders.get(next), new LeftOut.Undecided());
    }
}

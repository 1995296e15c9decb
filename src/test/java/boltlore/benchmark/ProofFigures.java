package boltlore.benchmark;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.OrderCounter;
import boltlore.proof.DemoFamily;
import boltlore.proof.FamilyProof;
import boltlore.proof.GeneratedFamily;
import boltlore.proof.Prover;
import boltlore.proof.kinds.Kinds;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;

/** How long proofs take, and the memory they hold: the demo families cold and warm, generated ones by their size. */
public final class ProofFigures {

    private static final int OPTIONS = 60;
    private static final int LIMITS = 120;

    private ProofFigures() {}

    /** With arguments: only generated families of these numbers of lines. */
    public static void main(String... lines) {
        if (lines.length == 0) {
            demo();
            counting();
        }
        List<String> sizes = lines.length == 0 ? List.of("500", "1000", "2500", "5000") : List.of(lines);
        sizes.forEach(size -> generated(Integer.parseInt(size)));
    }

    private static void demo() {
        Catalogue catalogue = DemoFamily.catalogue();
        for (String family : catalogue.families().keySet()) {
            for (int run = 1; run <= 10; run++) {
                if (run == 1 || run == 10) {
                    prove(family + (run == 1 ? ", first" : ", warm"), catalogue, catalogue.family(family));
                } else {
                    DemoFamily.prove(catalogue, family);
                }
            }
        }
    }

    private static void counting() {
        Family family = GeneratedFamily.of(50, OPTIONS, LIMITS, 1).family("van");
        long before = System.nanoTime();
        Count all = new OrderCounter(family).all();
        say("counting %d options, %d limits: %s in %d ms", OPTIONS, LIMITS, all, millis(before));
    }

    private static void generated(int lines) {
        Catalogue catalogue = GeneratedFamily.of(lines, OPTIONS, LIMITS, 1);
        prove(lines + " lines", catalogue, catalogue.family("van"));
    }

    private static void prove(String what, Catalogue catalogue, Family family) {
        long before = System.nanoTime();
        long cpuBefore = cpu();
        FamilyProof proof = Prover.prove(catalogue, family, Kinds.all(), Deadline.NONE, Prover.Progress.NONE);
        long millis = millis(before);
        long cpuMillis = (cpu() - cpuBefore) / 1_000_000;
        Runtime memory = Runtime.getRuntime();
        say(
                "%s: %,d statements, %d refuted, %s, %,d ms (%,d of them computing), %d MB taken from the system",
                what,
                proof.answers().size(),
                proof.defects().count(),
                proof.orders(),
                millis,
                cpuMillis,
                memory.totalMemory() >> 20);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long millis(long before) {
        return (System.nanoTime() - before) / 1_000_000;
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}

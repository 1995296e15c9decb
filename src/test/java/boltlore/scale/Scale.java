package boltlore.scale;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.checking.Checks;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.Chooser;
import boltlore.choosing.Walk;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.order.LeftOut;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
import boltlore.proof.kinds.Kinds;
import boltlore.resolution.Resolution;
import boltlore.resolution.rules.RuleResolver;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;

/**
 * Reads, checks, resolves, chooses, proves and exports made-up catalogues from 300 to 50,000 lines and 10 to 1,500 options, and
 * prints the processor's milliseconds of each and, between one size and the next, the slope: the exponent by which time grows with the
 * lines. n log n is a slope of about 1.1 to 1.2 at these sizes.
 *
 * <p>Each size is measured in the same process, warmed up by a small one; resolving is the median of 21 times, choosing the 95th
 * of 100 looks. Export is a process of its own from start to end, by the clock: {@code kit} with its four workbooks.
 */
public final class Scale {

    /** One size that is measured. */
    record Size(int lines, int options) {}

    /** What was measured of a size, milliseconds by kind of work in the order of the table. */
    record Measured(Size size, int lines, Map<String, Double> milliseconds) {}

    private static final List<Size> SIZES = List.of(
            new Size(300, 10),
            new Size(1_000, 40),
            new Size(5_000, 150),
            new Size(15_000, 500),
            new Size(50_000, 1_500));

    private static final long SEED = 20261130;
    private static final int PROVE_SECONDS = 600;

    private Scale() {}

    /**
     * Measures and prints.
     *
     * @param sizes as {@code LINESxOPTIONS}; none for all
     */
    public static void main(String... sizes) throws Exception {
        List<Size> wanted = Arrays.stream(sizes)
                .filter(size -> !size.isBlank())
                .map(size -> size.split("x", -1))
                .map(size -> new Size(Integer.parseInt(size[0]), Integer.parseInt(size[1])))
                .toList();
        measure(SIZES.get(0));
        List<Measured> all = new ArrayList<>();
        for (Size size : wanted.isEmpty() ? SIZES : wanted) {
            System.err.println(size.lines() + " lines, " + size.options() + " options");
            all.add(measure(size));
        }
        System.out.print(table(all));
    }

    static Measured measure(Size size) throws Exception {
        Path folder = Files.createTempDirectory("scale");
        MadeCatalogue.write(folder, size.lines(), size.options(), SEED);
        Map<String, Double> times = new LinkedHashMap<>();
        Catalogue catalogue = read(times, folder);
        Family family = catalogue.family(MadeCatalogue.FAMILY);
        timed(times, "check", () -> Checks.check(catalogue));
        Choices chosen = choose(times, family);
        resolve(times, catalogue, chosen);
        FamilyProof proof = timed(
                times,
                "prove",
                () -> Prover.prove(
                        catalogue,
                        family,
                        Kinds.all(),
                        Deadline.in(PROVE_SECONDS * 1_000_000_000L, System::nanoTime),
                        Prover.Progress.NONE));
        if (proof.only(Answer.NotDecided.class).findAny().isPresent()) {
            times.put("prove", Double.NaN);
        }
        export(times, folder, chosen);
        return new Measured(size, catalogue.parts().size(), times);
    }

    private static Catalogue read(Map<String, Double> times, Path folder) throws Exception {
        Outcome<Catalogue> outcome = timed(times, "read", () -> CatalogueReader.read(folder));
        if (outcome instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new IllegalStateException("A made-up catalogue has faults: " + outcome.faults());
    }

    /** Whole interviews, each look timed; gives back the choices of a finished one. */
    private static Choices choose(Map<String, Double> times, Family family) {
        long begun = worked();
        Walk walk = new Walk(family, SEED);
        ChoiceState.Sound seen = walk.look();
        times.put("first look", since(begun));
        double[] looks = new double[100];
        for (int i = 0; i < looks.length; i++) {
            walk.choose(seen);
            long look = worked();
            seen = walk.look();
            looks[i] = since(look);
        }
        Arrays.sort(looks);
        times.put("look, 95 of 100", looks[94]);
        return finished(family);
    }

    private static Choices finished(Family family) {
        Walk walk = new Walk(family, SEED + 1);
        ChoiceState.Sound seen = walk.look();
        while (!seen.questions().isEmpty()) {
            walk.choose(seen);
            seen = walk.look();
        }
        return seen.withForced();
    }

    private static void resolve(Map<String, Double> times, Catalogue catalogue, Choices chosen) throws Exception {
        RuleResolver resolver = timed(times, "rules", () -> new RuleResolver(catalogue));
        double[] runs = new double[21];
        for (int i = 0; i < runs.length; i++) {
            long begun = worked();
            Outcome<Resolution> outcome = resolver.resolve(chosen, new LeftOut.Undecided());
            runs[i] = since(begun);
            if (!(outcome instanceof Outcome.Sound<Resolution>)) {
                throw new IllegalStateException("A made-up order has faults: " + outcome.faults());
            }
        }
        Arrays.sort(runs);
        times.put("resolve", runs[10]);
    }

    private static void export(Map<String, Double> times, Path folder, Choices chosen) throws Exception {
        Path order = Files.createDirectories(folder.resolve("orders")).resolve("made-1.json");
        Map<String, String> all = new LinkedHashMap<>();
        Chooser.list(chosen).forEach(choice -> all.put(choice.option().text(), choice.value()));
        MadeCatalogue.order(order, all);
        long begun = System.nanoTime();
        int exit = new ProcessBuilder(
                        "java",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "boltlore.cli.Boltlore",
                        "kit",
                        order.toString(),
                        "--catalogue",
                        folder.toString(),
                        "--out",
                        folder.resolve("exports").toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("kit.txt").toFile())
                .start()
                .waitFor();
        times.put("kit, a process", (System.nanoTime() - begun) / 1e6);
        if (exit != 0) {
            throw new IllegalStateException(Files.readString(folder.resolve("kit.txt")));
        }
    }

    private static <T> T timed(Map<String, Double> times, String work, Callable<T> done) throws Exception {
        long begun = worked();
        T result = done.call();
        times.put(work, since(begun));
        return result;
    }

    /** The processor's time of this thread, which other programs on the machine disturb less than the clock's. */
    private static long worked() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double since(long nanos) {
        return (worked() - nanos) / 1e6;
    }

    /** A row a size; below each but the first, the slopes from the size before. */
    static String table(List<Measured> all) {
        StringBuilder text = new StringBuilder(
                row("milliseconds", all.get(0).milliseconds().keySet().toArray()));
        Measured before = null;
        for (Measured each : all) {
            if (before != null) {
                text.append(slopes(before, each));
            }
            text.append(row(
                    "%,d lines, %,d options".formatted(each.lines(), each.size().options()),
                    each.milliseconds().values().stream().map(Scale::shown).toArray()));
            before = each;
        }
        return text.toString();
    }

    private static String slopes(Measured before, Measured after) {
        double lines = Math.log((double) after.lines() / before.lines());
        return row(
                "  slope",
                after.milliseconds().entrySet().stream()
                        .map(entry -> slope(before.milliseconds().get(entry.getKey()), entry.getValue(), lines))
                        .toArray());
    }

    private static String slope(@Nullable Double before, double after, double lines) {
        return before == null || Double.isNaN(before + after)
                ? "-"
                : String.format(Locale.ROOT, "%.2f", Math.log(after / before) / lines);
    }

    private static String shown(double milliseconds) {
        return Double.isNaN(milliseconds) ? "not decided" : String.format(Locale.ROOT, "%,.1f", milliseconds);
    }

    private static String row(String first, Object... others) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-29s", first));
        for (Object other : others) {
            row.append(String.format(Locale.ROOT, "%17s", other));
        }
        return row.append('\n').toString();
    }
}

package boltlore.cli;

import boltlore.cli.PlantedCopy.Seen;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * How many slips in the numbers of the demo catalogue {@code check} or {@code prove} sees: of every numeric field some values,
 * drawn by chance, are made ten times as large, a tenth, twice as large, or left out, one at a time. Prints the share of each
 * field, the blindest first, and last of all; what was not seen is listed in {@code target/planted-faults.txt}.
 */
public final class PlantedFaults {

    private static final int EACH = 2;

    /** So many are proved at once: most are seen by none. */
    private static final int TOGETHER = 16;

    private static final long SEED = 20261130;

    private record Fault(NumericLeaf leaf, NumericLeaf.Slip slip) {}

    private final PlantedCopy copy;
    private final PrintStream unseen;
    private final Map<String, Map<NumericLeaf.Slip, Map<Seen, Integer>>> counted = new TreeMap<>();

    private PlantedFaults(PlantedCopy copy, PrintStream unseen) {
        this.copy = copy;
        this.unseen = unseen;
    }

    /** Values of each field, and a pattern that fields must contain; both may be left out. */
    public static void main(String[] args) throws IOException {
        int each = args.length > 0 && !args[0].isBlank() ? Integer.parseInt(args[0]) : EACH;
        Pattern wanted = Pattern.compile(args.length > 1 ? args[1] : "");
        Path folder = Files.createTempDirectory("planted-faults");
        Files.createDirectories(Path.of("target"));
        try (PrintStream unseen = new PrintStream(
                Files.newOutputStream(Path.of("target/planted-faults.txt")), true, StandardCharsets.UTF_8)) {
            new PlantedFaults(PlantedCopy.of(folder), unseen).run(each, wanted);
        }
    }

    private void run(int each, Pattern wanted) throws IOException {
        Map<String, List<NumericLeaf>> fields = new TreeMap<>();
        for (Path file : copy.files()) {
            NumericLeaf.in(copy.folder(), file)
                    .filter(leaf -> wanted.matcher(leaf.field()).find())
                    .forEach(leaf -> fields.computeIfAbsent(leaf.field(), any -> new ArrayList<>())
                            .add(leaf));
        }
        List<Fault> open = new ArrayList<>();
        Random chance = new Random(SEED);
        for (List<NumericLeaf> field : fields.values()) {
            List<NumericLeaf> drawn = new ArrayList<>(field);
            Collections.shuffle(drawn, chance);
            for (NumericLeaf leaf : drawn.subList(0, Math.min(each, drawn.size()))) {
                open.addAll(unchecked(leaf));
            }
        }
        open.sort(Comparator.comparing(Fault::slip));
        for (int from = 0; from < open.size(); from += TOGETHER) {
            proved(open.subList(from, Math.min(from + TOGETHER, open.size())));
        }
        print();
    }

    /** What reading and checking do not see of a number. */
    private List<Fault> unchecked(NumericLeaf leaf) throws IOException {
        List<Fault> open = new ArrayList<>();
        for (NumericLeaf.Slip slip : NumericLeaf.Slip.values()) {
            Fault fault = new Fault(leaf, slip);
            if (!leaf.with(slip, copy.text(leaf.file())).equals(copy.text(leaf.file()))) {
                Seen seen = copy.checked(changed(List.of(fault)));
                if (seen == Seen.UNSEEN) {
                    open.add(fault);
                } else {
                    count(fault, seen);
                }
            }
        }
        return open;
    }

    /** Many are proved together: as long as nothing is found of them, none is seen. */
    private void proved(List<Fault> together) throws IOException {
        List<Fault> seen = copy.proofSees(together, this::changed);
        together.forEach(fault -> count(fault, seen.contains(fault) ? Seen.PROOF : Seen.UNSEEN));
    }

    /** The files with the faults in them, the hindmost first, so that the places of the others stay. */
    private Map<Path, String> changed(List<Fault> faults) {
        List<Fault> hindmost = new ArrayList<>(faults);
        hindmost.sort(Comparator.comparing((Fault fault) -> fault.leaf().from()).reversed());
        Map<Path, String> changed = new HashMap<>();
        for (Fault fault : hindmost) {
            Path file = fault.leaf().file();
            changed.put(file, fault.leaf().with(fault.slip(), changed.getOrDefault(file, copy.text(file))));
        }
        return changed;
    }

    private void count(Fault fault, Seen seen) {
        counted.computeIfAbsent(fault.leaf().field(), any -> new EnumMap<>(NumericLeaf.Slip.class))
                .computeIfAbsent(fault.slip(), any -> new EnumMap<>(Seen.class))
                .merge(seen, 1, Integer::sum);
        if (seen == Seen.UNSEEN) {
            unseen.println(fault.leaf().file() + " " + fault.leaf().place() + " "
                    + fault.leaf().written() + " " + fault.slip());
        }
    }

    private void print() {
        System.out.println("field | x10 | /10 | x2 | left out | seen of planted");
        counted.entrySet().stream()
                .sorted((one, other) -> Double.compare(share(one.getValue()), share(other.getValue())))
                .forEach(each -> System.out.println(row(each.getKey(), each.getValue())));
        Map<NumericLeaf.Slip, Map<Seen, Integer>> all = new EnumMap<>(NumericLeaf.Slip.class);
        counted.values()
                .forEach(field -> field.forEach((slip, seen) ->
                        seen.forEach((where, count) -> all.computeIfAbsent(slip, any -> new EnumMap<>(Seen.class))
                                .merge(where, count, Integer::sum))));
        System.out.println(row("all", all));
        all.forEach((slip, seen) -> System.out.println(slip + " " + seen));
    }

    private static String row(String field, Map<NumericLeaf.Slip, Map<Seen, Integer>> slips) {
        StringBuilder row = new StringBuilder(field);
        for (NumericLeaf.Slip slip : NumericLeaf.Slip.values()) {
            row.append(" | ").append(of(slips.getOrDefault(slip, Map.of())));
        }
        return row.append(String.format(Locale.ROOT, " | %.0f %%", 100 * share(slips)))
                .toString();
    }

    private static String of(Map<Seen, Integer> seen) {
        int all = seen.values().stream().mapToInt(count -> count).sum();
        return all - seen.getOrDefault(Seen.UNSEEN, 0) + "/" + all;
    }

    private static double share(Map<NumericLeaf.Slip, Map<Seen, Integer>> slips) {
        int all = 0;
        int missed = 0;
        for (Map<Seen, Integer> seen : slips.values()) {
            all += seen.values().stream().mapToInt(count -> count).sum();
            missed += seen.getOrDefault(Seen.UNSEEN, 0);
        }
        return all == 0 ? 1 : (double) (all - missed) / all;
    }
}

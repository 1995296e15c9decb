package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.catalogue.json.PartlyRead;
import boltlore.checking.Checks;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
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
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

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

    /** Where a fault is seen first. */
    private enum Seen {
        READING,
        CHECK,
        PROOF,
        UNSEEN
    }

    private record Fault(NumericLeaf leaf, NumericLeaf.Slip slip) {}

    private final Path folder;
    private final PrintStream unseen;
    private final Map<Path, String> texts = new HashMap<>();
    private final Map<String, Set<String>> sound = new HashMap<>();
    private final Map<String, Map<NumericLeaf.Slip, Map<Seen, Integer>>> counted = new TreeMap<>();

    private PlantedFaults(Path folder, PrintStream unseen) {
        this.folder = folder;
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
            new PlantedFaults(folder, unseen).run(each, wanted);
        }
    }

    private void run(int each, Pattern wanted) throws IOException {
        Map<String, List<NumericLeaf>> fields = new TreeMap<>();
        for (Path file : copied()) {
            NumericLeaf.in(folder, file)
                    .filter(leaf -> wanted.matcher(leaf.field()).find())
                    .forEach(leaf -> fields.computeIfAbsent(leaf.field(), any -> new ArrayList<>())
                            .add(leaf));
        }
        Catalogue whole = read().rest();
        whole.families().values().forEach(family -> sound.put(family.name(), proved(whole, family)));
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

    /** The demo's files but orders, schemas and remnants, which are no part of the catalogue. */
    private List<Path> copied() throws IOException {
        List<Path> files = new ArrayList<>();
        Path demo = Path.of("catalog");
        try (Stream<Path> all = Files.walk(demo)) {
            for (Path each : all.filter(Files::isRegularFile).sorted().toList()) {
                Path name = demo.relativize(each);
                Files.createDirectories(folder.resolve(name).toAbsolutePath().getParent());
                Files.copy(each, folder.resolve(name));
                if (name.toString().endsWith(".json") && !name.toString().matches("(orders|schema|remnants|lists).*")) {
                    files.add(name);
                    texts.put(name, Files.readString(each));
                }
            }
        }
        return files;
    }

    /** What reading and checking do not see of a number. */
    private List<Fault> unchecked(NumericLeaf leaf) throws IOException {
        List<Fault> open = new ArrayList<>();
        for (NumericLeaf.Slip slip : NumericLeaf.Slip.values()) {
            Fault fault = new Fault(leaf, slip);
            if (!leaf.with(slip, text(leaf.file())).equals(text(leaf.file()))) {
                plant(List.of(fault));
                PartlyRead read = read();
                if (!read.whole().faults().isEmpty()) {
                    count(fault, Seen.READING);
                } else if (!Checks.checkRest(read.rest(), read.faulty(), read.workshopKnown())
                        .isEmpty()) {
                    count(fault, Seen.CHECK);
                } else {
                    open.add(fault);
                }
                mend(List.of(fault));
            }
        }
        return open;
    }

    /** Many are proved together: as long as nothing is found of them, none is seen. */
    private void proved(List<Fault> together) throws IOException {
        plant(together);
        boolean seen = seen(together);
        mend(together);
        if (!seen) {
            together.forEach(fault -> count(fault, Seen.UNSEEN));
        } else if (together.size() == 1) {
            count(together.get(0), Seen.PROOF);
        } else {
            proved(together.subList(0, together.size() / 2));
            proved(together.subList(together.size() / 2, together.size()));
        }
    }

    private boolean seen(List<Fault> together) {
        PartlyRead read = read();
        return !read.whole().faults().isEmpty()
                || read.rest().families().values().stream()
                        .filter(family ->
                                together.stream().anyMatch(fault -> fault.leaf().mayTouch(family.name())))
                        .anyMatch(family ->
                                !sound.getOrDefault(family.name(), Set.of()).equals(proved(read.rest(), family)));
    }

    /** Writes the faults into their files, the hindmost first, so that the places of the others stay. */
    private void plant(List<Fault> faults) throws IOException {
        List<Fault> hindmost = new ArrayList<>(faults);
        hindmost.sort(Comparator.comparing((Fault fault) -> fault.leaf().from()).reversed());
        for (Fault fault : hindmost) {
            Path file = folder.resolve(fault.leaf().file());
            Files.writeString(file, fault.leaf().with(fault.slip(), Files.readString(file)));
        }
    }

    private void mend(List<Fault> faults) throws IOException {
        for (Fault fault : faults) {
            Files.writeString(
                    folder.resolve(fault.leaf().file()), text(fault.leaf().file()));
        }
    }

    private String text(Path file) {
        return texts.getOrDefault(file, "");
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

    private PartlyRead read() {
        if (CatalogueReader.readAsFar(folder) instanceof Outcome.Sound<PartlyRead> sound) {
            return sound.value();
        }
        throw new IllegalStateException("a catalogue that cannot be read at all");
    }

    private static Set<String> proved(Catalogue catalogue, Family family) {
        FamilyProof proof = Prover.prove(catalogue, family, ProvedKinds.all(), Deadline.NONE, Prover.Progress.NONE);
        Set<String> titles = new HashSet<>();
        TrialKits.of(CatalogueSession.of(catalogue), proof, Deadline.NONE)
                .with(proof)
                .openDefects()
                .forEach(defect -> titles.add(defect.statement().title()));
        return titles;
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

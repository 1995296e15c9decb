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
    private static final long SEED = 20261130;

    /** Where a fault is seen first. */
    private enum Seen {
        READING,
        CHECK,
        PROOF,
        UNSEEN
    }

    private final Path folder;
    private final PrintStream unseen;
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
        Random chance = new Random(SEED);
        for (Map.Entry<String, List<NumericLeaf>> field : fields.entrySet()) {
            List<NumericLeaf> drawn = new ArrayList<>(field.getValue());
            Collections.shuffle(drawn, chance);
            for (NumericLeaf leaf : drawn.subList(0, Math.min(each, drawn.size()))) {
                plant(leaf);
            }
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
                }
            }
        }
        return files;
    }

    private void plant(NumericLeaf leaf) throws IOException {
        Path file = folder.resolve(leaf.file());
        String text = Files.readString(file);
        for (NumericLeaf.Slip slip : NumericLeaf.Slip.values()) {
            String changed = leaf.with(slip, text);
            if (!changed.equals(text)) {
                Files.writeString(file, changed);
                Seen seen = seen(leaf);
                counted.computeIfAbsent(leaf.field(), any -> new EnumMap<>(NumericLeaf.Slip.class))
                        .computeIfAbsent(slip, any -> new EnumMap<>(Seen.class))
                        .merge(seen, 1, Integer::sum);
                if (seen == Seen.UNSEEN) {
                    unseen.println(leaf.file() + " " + leaf.place() + " " + leaf.written() + " " + slip);
                }
            }
        }
        Files.writeString(file, text);
    }

    private Seen seen(NumericLeaf leaf) {
        PartlyRead read = read();
        if (!read.whole().faults().isEmpty()) {
            return Seen.READING;
        } else if (!Checks.checkRest(read.rest(), read.faulty(), read.workshopKnown())
                .isEmpty()) {
            return Seen.CHECK;
        }
        boolean proof = read.rest().families().values().stream()
                .filter(family -> !leaf.file().startsWith("families")
                        || leaf.file().startsWith(Path.of("families", family.name())))
                .anyMatch(family -> !sound.getOrDefault(family.name(), Set.of()).equals(proved(read.rest(), family)));
        return proof ? Seen.PROOF : Seen.UNSEEN;
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

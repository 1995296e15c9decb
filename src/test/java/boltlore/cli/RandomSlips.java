package boltlore.cli;

import boltlore.cli.PlantedCopy.Seen;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An honest sample of slips: fields of the demo catalogue drawn by chance, numbers, words out of a list, references, and yes or no,
 * half of them each value alike, half of them each field alike; of each one slip, drawn by chance too. Prints the share that
 * reading, {@code check} or {@code prove} sees, and lists all in {@code target/random-slips.txt}. Texts for people are left out,
 * and so are names that a thing is known by.
 */
public final class RandomSlips {

    private static final int TOGETHER = 16;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** What people read; nothing depends on it. */
    private static final Set<String> PROSE = Set.of(
            "en", "de", "fr", "notes", "source", "says", "because", "asks", "$schema", "assumed", "note", "text",
            "issued", "licence");

    private static final JsonFactory FACTORY = new JsonFactory();

    /** A value in a file: where its key begins, or itself in a list, and where it begins and ends. */
    private record Leaf(Path file, String field, String place, String written, int key, int from, int to) {

        String name() {
            return field.substring(Math.max(field.lastIndexOf(' '), field.lastIndexOf('.')) + 1);
        }
    }

    private record Slip(Leaf leaf, String what, String instead) {}

    private final PlantedCopy copy;
    private final Map<String, List<Leaf>> fields;
    private final Random chance;

    private RandomSlips(PlantedCopy copy, long seed) throws IOException {
        this.copy = copy;
        this.chance = new Random(seed);
        Map<String, List<Leaf>> all = new TreeMap<>();
        for (Path file : copy.files()) {
            leaves(file)
                    .forEach(leaf -> all.computeIfAbsent(leaf.field(), any -> new ArrayList<>())
                            .add(leaf));
        }
        all.values().removeIf(leaves -> PROSE.contains(leaves.get(0).name()) || names(leaves));
        this.fields = all;
    }

    /** How many slips of each half, and the seed; both may be left out. */
    public static void main(String[] args) throws IOException {
        int many = args.length > 0 && !args[0].isBlank() ? Integer.parseInt(args[0]) : 100;
        long seed = args.length > 1 && !args[1].isBlank() ? Long.parseLong(args[1]) : 1;
        RandomSlips slips = new RandomSlips(PlantedCopy.of(Files.createTempDirectory("random-slips")), seed);
        System.out.println("seed " + seed);
        Files.createDirectories(Path.of("target"));
        try (PrintStream list = new PrintStream(
                Files.newOutputStream(Path.of("target/random-slips.txt")), true, StandardCharsets.UTF_8)) {
            slips.print("each value alike", slips.drawn(many, slips::anyLeaf), list);
            slips.print("each field alike", slips.drawn(many, slips::anyField), list);
        }
    }

    private List<Leaf> leaves(Path file) throws IOException {
        List<Leaf> leaves = new ArrayList<>();
        String text = copy.text(file);
        int key = 0;
        try (JsonParser parser = FACTORY.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                int from = (int) parser.currentTokenLocation().getCharOffset();
                if (token == JsonToken.FIELD_NAME) {
                    key = from;
                } else if (token.isScalarValue()) {
                    String place = parser.getParsingContext().pathAsPointer().toString();
                    boolean inList = parser.getParsingContext().inArray();
                    String written = parser.getText();
                    int to =
                            token == JsonToken.VALUE_STRING ? text.indexOf('"', from + 1) + 1 : from + written.length();
                    leaves.add(new Leaf(
                            file, NumericLeaf.field(file, place), place, written, inList ? from : key, from, to));
                }
            }
        }
        return leaves;
    }

    /** A field whose value always stands first in its object and never twice is what a thing is known by. */
    private boolean names(List<Leaf> leaves) {
        Set<String> values = new HashSet<>();
        return leaves.size() > 1
                && leaves.stream()
                        .allMatch(leaf -> copy.text(leaf.file())
                                        .substring(0, leaf.key())
                                        .stripTrailing()
                                        .endsWith("{")
                                && values.add(leaf.file().getParent() + leaf.written()));
    }

    private Leaf anyLeaf() {
        List<Leaf> all = fields.values().stream().flatMap(List::stream).toList();
        return all.get(chance.nextInt(all.size()));
    }

    private Leaf anyField() {
        List<List<Leaf>> all = List.copyOf(fields.values());
        List<Leaf> field = all.get(chance.nextInt(all.size()));
        return field.get(chance.nextInt(field.size()));
    }

    private List<Slip> drawn(int many, java.util.function.Supplier<Leaf> from) {
        List<Slip> slips = new ArrayList<>();
        Set<Leaf> taken = new HashSet<>();
        while (slips.size() < many) {
            Leaf leaf = from.get();
            List<Slip> possible = possible(leaf).stream()
                    .filter(slip -> !changed(List.of(slip)).get(leaf.file()).equals(copy.text(leaf.file())))
                    .toList();
            if (!possible.isEmpty() && taken.add(leaf)) {
                slips.add(possible.get(chance.nextInt(possible.size())));
            }
        }
        return slips;
    }

    private List<Slip> possible(Leaf leaf) {
        List<Slip> slips = new ArrayList<>();
        if (leaf.key() != leaf.from()) {
            slips.add(new Slip(leaf, "left out", ""));
        }
        if (leaf.written().equals("true") || leaf.written().equals("false")) {
            slips.add(new Slip(leaf, "the other", leaf.written().equals("true") ? "false" : "true"));
        } else if (NUMBER.matcher(leaf.written()).matches()) {
            numbers(leaf, slips);
        } else {
            List<String> others = fields.getOrDefault(leaf.field(), List.of()).stream()
                    .map(Leaf::written)
                    .filter(other -> !other.equals(leaf.written())
                            && !NUMBER.matcher(other).matches())
                    .distinct()
                    .sorted()
                    .toList();
            if (!others.isEmpty()) {
                slips.add(new Slip(leaf, "another", others.get(chance.nextInt(others.size()))));
            }
        }
        return slips;
    }

    private static void numbers(Leaf leaf, List<Slip> slips) {
        BigDecimal number = new BigDecimal(leaf.written());
        slips.add(new Slip(leaf, "x10", plain(number.movePointRight(1))));
        slips.add(new Slip(leaf, "/10", plain(number.movePointLeft(1))));
        slips.add(new Slip(leaf, "x2", plain(number.add(number))));
        String digits = leaf.written();
        for (int at = digits.startsWith("-") ? 1 : 0; at + 1 < digits.length(); at++) {
            if (Character.isDigit(digits.charAt(at)) && Character.isDigit(digits.charAt(at + 1))) {
                String other =
                        digits.substring(0, at) + digits.charAt(at + 1) + digits.charAt(at) + digits.substring(at + 2);
                slips.add(new Slip(leaf, "digits swapped", plain(new BigDecimal(other))));
                break;
            }
        }
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private Map<Path, String> changed(List<Slip> slips) {
        List<Slip> hindmost = new ArrayList<>(slips);
        hindmost.sort(Comparator.comparing((Slip slip) -> slip.leaf().from()).reversed());
        Map<Path, String> changed = new HashMap<>();
        for (Slip slip : hindmost) {
            Leaf leaf = slip.leaf();
            String text = changed.getOrDefault(leaf.file(), copy.text(leaf.file()));
            boolean quoted = text.charAt(leaf.from()) == '"';
            String said = quoted ? '"' + slip.instead() + '"' : slip.instead();
            changed.put(
                    leaf.file(),
                    slip.what().equals("left out")
                            ? NumericLeaf.without(text, leaf.key(), leaf.to())
                            : text.substring(0, leaf.from()) + said + text.substring(leaf.to()));
        }
        return changed;
    }

    private void print(String title, List<Slip> slips, PrintStream list) throws IOException {
        Map<Slip, Seen> seen = new HashMap<>();
        for (Slip slip : slips) {
            seen.put(slip, copy.checked(changed(List.of(slip))));
        }
        List<Slip> open =
                slips.stream().filter(slip -> seen.get(slip) == Seen.UNSEEN).toList();
        for (int from = 0; from < open.size(); from += TOGETHER) {
            copy.proofSees(open.subList(from, Math.min(from + TOGETHER, open.size())), this::changed)
                    .forEach(slip -> seen.put(slip, Seen.PROOF));
        }
        list.println(title);
        slips.stream()
                .sorted(Comparator.comparing((Slip slip) -> seen.get(slip)).reversed())
                .forEach(slip -> list.println(seen.get(slip) + " " + slip.leaf().file() + " "
                        + slip.leaf().place() + " " + slip.leaf().written() + " " + slip.what() + " "
                        + slip.instead()));
        Map<Seen, Long> counts = seen.values().stream()
                .collect(Collectors.groupingBy(
                        Function.identity(), () -> new EnumMap<>(Seen.class), Collectors.counting()));
        long missed = counts.getOrDefault(Seen.UNSEEN, 0L);
        System.out.println(title + ": " + counts
                + String.format(
                        Locale.ROOT,
                        ", %.0f %% of %d seen",
                        100.0 * (slips.size() - missed) / slips.size(),
                        slips.size()));
    }
}

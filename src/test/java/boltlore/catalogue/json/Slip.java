package boltlore.catalogue.json;

import boltlore.faults.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One way of spoiling the small catalogue, and the faults that must come of it; none for a near miss. Slips are written
 * in text files, a paragraph each: what it is, then changes ({@code in} a file, {@code -} what stood there, {@code +}
 * what stands there now, with {@code \n} for a line break), then faults ({@code !} file:line pointer, found, expected,
 * advice).
 */
record Slip(String says, List<Change> changes, List<Fault> faults) {

    record Change(String file, String from, String to) {}

    private static final int FAULT_WORD = "  expected ".length();

    static List<Slip> readAll(Path file) {
        try {
            List<Slip> slips = new ArrayList<>();
            for (String paragraph : Files.readString(file).split("\n\n", -1)) {
                slips.add(parse(paragraph.strip().lines().toList()));
            }
            return slips;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Slip parse(List<String> lines) {
        List<Change> changes = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("in ")) {
                changes.add(new Change(line.substring(3), text(lines.get(i + 1)), text(lines.get(i + 2))));
            } else if (line.startsWith("! ")) {
                boolean advice = i + 3 < lines.size() && lines.get(i + 3).startsWith("  advice");
                faults.add(fault(line.substring(2), lines.subList(i + 1, i + (advice ? 4 : 3))));
            }
        }
        return new Slip(lines.get(0), changes, faults);
    }

    private static String text(String line) {
        return line.length() <= 2 ? "" : line.substring(2).replace("\\n", "\n");
    }

    private static Fault fault(String where, List<String> words) {
        int blank = where.indexOf(' ');
        String place = where.substring(blank + 1);
        int colon = where.lastIndexOf(':', blank);
        return new Fault(
                where.substring(0, colon),
                Integer.parseInt(where.substring(colon + 1, blank)),
                place,
                words.get(0).substring(FAULT_WORD),
                words.get(1).substring(FAULT_WORD),
                words.size() > 2 ? words.get(2).substring(FAULT_WORD) : "");
    }
}

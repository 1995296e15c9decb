package boltlore.trades.testing;

import boltlore.bill.Bill;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that is tested of one finished kit, in order, and the papers that go with it.
 *
 * @param revision of the catalogue that the limits come from, for who reads the sheet
 */
public record TestPlan(
        Bill bill, String revision, List<GroupPlan> groups, List<PlacedLabel> labels, List<KitSection> sections) {

    private static final int CODE_DIGITS = 12;

    public TestPlan {
        groups = List.copyOf(groups);
        labels = List.copyOf(labels);
        sections = List.copyOf(sections);
    }

    public Stream<TestRow> rows() {
        return groups.stream().flatMap(group -> group.rows().stream());
    }

    public Stream<Box> boxes() {
        return rows().flatMap(row -> row.boxes().stream());
    }

    public Optional<TestRow> row(String key) {
        return rows().filter(row -> row.key().equals(key)).findFirst();
    }

    /**
     * The code that a record is bound to: it changes with what is tested, a limit, a unit or an instrument's scale, and
     * with nothing else of the catalogue. A letter leads, so that no spreadsheet program takes it for a number.
     */
    public String limits() {
        StringBuilder all = new StringBuilder();
        rows().forEach(row -> {
            all.append(row.key()).append(' ').append(row.limit()).append(' ').append(row.unit());
            row.boxes()
                    .forEach(
                            box -> all.append(' ').append(box.key()).append(' ').append(box.scale()));
            all.append(' ').append(row.suitedOhm()).append('\n');
        });
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(all.toString().getBytes(StandardCharsets.UTF_8));
            return "L" + HexFormat.of().formatHex(hash).substring(0, CODE_DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    public String order() {
        return bill.order().name();
    }
}

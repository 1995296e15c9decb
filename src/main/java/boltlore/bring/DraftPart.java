package boltlore.bring;

import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A part as it comes together from the rows that name it. */
final class DraftPart {

    /**
     * How many, and for which orders.
     *
     * @param when values by option; empty where it is always
     */
    record Line(int row, String note, BigDecimal quantity, Map<String, List<String>> when) {}

    private static final Map<Role, String> NOTED = new EnumMap<>(Map.of(
            Role.NOTE, "",
            Role.MAKER, "Maker: ",
            Role.MAKER_CODE, "Maker's number: ",
            Role.DRAWING, "Drawing: ",
            Role.REFERENCE, "Reference: ",
            Role.MATERIAL, "Material: ",
            Role.FINISH, "Finish: ",
            Role.PACK, "Pack: ",
            Role.LINK, "Link: "));

    /** What a part has once, whatever the number of its rows. */
    private static final Map<Role, String> NUMBERS =
            new EnumMap<>(Map.of(Role.COST, "a cost of", Role.MASS, "a mass of"));

    private static final Map<Role, String> TEXTS = new EnumMap<>(Map.of(
            Role.SUPPLIER, "the supplier",
            Role.ORDER_CODE, "the order code",
            Role.REVISION, "the revision",
            Role.DRAWING, "the drawing"));

    private static final int DAYS = 7;
    private static final int DECIMALS_OF_COST = 6;
    /** kg in an avoirdupois pound, exact: NIST SP 811, appendix B.8. */
    private static final BigDecimal POUND = new BigDecimal("0.45359237");

    private static final BigDecimal GRAMS = new BigDecimal("0.001");

    private final TableRead read;
    private final Entry entry;
    private final List<Line> lines = new ArrayList<>();
    private final Map<DraftPart, BigDecimal> contains = new LinkedHashMap<>();
    private final List<DraftPart> alternates = new ArrayList<>();
    private String number = "";
    private String unit = "";
    private boolean elsewhere;
    private boolean perPack;

    DraftPart(TableRead read, Entry entry) {
        this.read = read;
        this.entry = entry;
    }

    /** One number has one meaning: what a later row says otherwise of it is told, for the first row's is brought in. */
    void seen(Entry again, TableRead where, List<Doubt> doubts) {
        if (again.row() == entry.row() && where.equals(read)) {
            return;
        }
        if (!Words.plain(again.name()).equals(Words.plain(entry.name()))) {
            doubts.add(otherwise(
                    again,
                    where,
                    "'" + again.name() + "' has the number of '" + entry.name() + "'",
                    "under that name"));
        }
        NUMBERS.forEach((role, word) -> unlike(
                cell(role).map(Digits::plain),
                cell(where, role, again.row()).map(Digits::plain),
                word,
                again,
                where,
                doubts));
        TEXTS.forEach(
                (role, word) -> unlike(said(entry.text(role)), said(again.text(role)), word, again, where, doubts));
    }

    private void unlike(
            Optional<String> first,
            Optional<String> other,
            String word,
            Entry again,
            TableRead where,
            List<Doubt> doubts) {
        if (first.isPresent() && other.isPresent() && !first.equals(other)) {
            doubts.add(otherwise(
                    again,
                    where,
                    "'" + entry.name() + "' has " + word + " " + other.get() + " here and " + first.get(),
                    "with that"));
        }
    }

    private Doubt otherwise(Entry again, TableRead where, String says, String kept) {
        String at = where.table().address(again.row(), where.table().firstColumn());
        return new Doubt(at, again.row(), false, says + " in row " + entry.row() + ", and is brought in " + kept, "");
    }

    private static Optional<String> said(String text) {
        return Optional.of(text.strip()).filter(said -> !said.isEmpty());
    }

    void counted(String in) {
        unit = unit.isEmpty() ? in : unit;
    }

    /** It is used inside another part, or in its place. */
    void standsIn() {
        elsewhere = true;
    }

    boolean isUsed() {
        return elsewhere || !lines.isEmpty();
    }

    void number(String itsOwn) {
        number = itsOwn;
    }

    String number() {
        return number;
    }

    TableRead read() {
        return read;
    }

    Entry entry() {
        return entry;
    }

    /** Adds a line; one for the same orders with the same note takes its count instead, and the row of that is told. */
    Optional<Integer> add(Line line) {
        for (int i = 0; i < lines.size(); i++) {
            Line first = lines.get(i);
            if (first.when().equals(line.when()) && first.note().equals(line.note())) {
                lines.set(
                        i, new Line(first.row(), first.note(), first.quantity().add(line.quantity()), first.when()));
                return Optional.of(first.row());
            }
        }
        lines.add(line);
        return Optional.empty();
    }

    List<Line> lines() {
        return lines;
    }

    Map<DraftPart, BigDecimal> contains() {
        return contains;
    }

    List<DraftPart> alternates() {
        return alternates;
    }

    String unit() {
        return unit.isEmpty() ? "each" : unit;
    }

    /** Of one piece; where the list's is for a pack, divided by how many are in it. */
    Optional<BigDecimal> cost() {
        Optional<BigDecimal> cost = cell(Role.COST).filter(each -> each.signum() >= 0);
        Optional<BigDecimal> pack = packOf();
        return perPack && pack.isPresent()
                ? cost.map(all -> all.divide(pack.get(), DECIMALS_OF_COST, RoundingMode.HALF_UP)
                        .stripTrailingZeros())
                : cost;
    }

    /** How many are in a pack. */
    Optional<BigDecimal> packOf() {
        return cell(Role.PACK).filter(pack -> pack.signum() > 0);
    }

    /** The list's costs are for a pack each. */
    void perPack() {
        perPack = true;
    }

    /** In the unit of its heading. */
    Optional<BigDecimal> mass() {
        return cell(Role.MASS).filter(mass -> mass.signum() >= 0);
    }

    /** 'kg', 'g' or 'lb' as the heading says, or empty. */
    String massUnit() {
        String heading = read.columns().stream()
                .filter(column -> column.role() == Role.MASS)
                .map(column -> " " + Words.plain(column.heading()) + " ")
                .findFirst()
                .orElse("");
        if (heading.contains(" kg ")) {
            return "kg";
        }
        boolean pounds =
                List.of("lb", "lbs", "pound", "pounds").stream().anyMatch(word -> heading.contains(' ' + word + ' '));
        return pounds ? "lb" : heading.contains(" g ") || heading.contains(" gram ") ? "g" : "";
    }

    static BigDecimal inKg(BigDecimal mass, String unit) {
        return switch (unit) {
            case "g" -> mass.multiply(GRAMS).stripTrailingZeros();
            case "lb" -> mass.multiply(POUND).stripTrailingZeros();
            default -> mass;
        };
    }

    private Optional<BigDecimal> cell(Role role) {
        return cell(read, role, entry.row());
    }

    private static Optional<BigDecimal> cell(TableRead read, Role role, int row) {
        return read.columns().stream()
                .filter(column -> column.role() == role)
                .findFirst()
                .flatMap(column -> Amount.money(read.table().cell(row, column.at()), read.decimalComma()));
    }

    /** What the row says beside what a part has keys for. */
    static String note(Entry entry) {
        List<String> notes = new ArrayList<>();
        NOTED.forEach((role, words) -> {
            if (!entry.text(role).isEmpty()) {
                notes.add(words + entry.text(role));
            }
        });
        return String.join("; ", notes);
    }

    /** Whole days, of weeks seven each; empty where the row says none that are plain. */
    String leadDays() {
        String text = entry.text(Role.LEAD_DAYS);
        String heading = heading(Role.LEAD_DAYS);
        boolean weeks = Words.mentions(Words.Saying.WEEKS, heading) || Words.mentions(Words.Saying.WEEKS, text);
        String number = text.replaceFirst("\\s*[\\p{L}.()]+$", "");
        return number.matches("\\d{1,3}") ? String.valueOf(Integer.parseInt(number) * (weeks ? DAYS : 1)) : "";
    }

    private String heading(Role role) {
        return read.columns().stream()
                .filter(column -> column.role() == role)
                .map(Column::heading)
                .findFirst()
                .orElse("");
    }

    /** The bin, where it is written as the catalogue writes bins. */
    String bin() {
        String bin = entry.text(Role.BIN);
        return bin.matches("[A-Z0-9]{1,4}-\\d{1,3}-\\d{1,3}-[A-Z0-9]{1,3}-\\d{1,3}") ? bin : "";
    }

    /** Small words for the sub-system, from the heading over the row or its group. */
    String subSystem() {
        String words = entry.section().isEmpty() ? entry.text(Role.GROUP) : entry.section();
        String plain = Slugs.words(words);
        return plain.isEmpty() ? "parts" : plain;
    }
}

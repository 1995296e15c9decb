package boltlore.bring;

import static java.util.Map.entry;

import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What the lists of a file come to as parts and lines of a catalogue, and what that leaves open. */
final class Draft {

    /** What parts need and lists leave out, in the order in which it is asked. */
    static final List<String> MISSING =
            List.of("currency", "cost", "massKg", "massUnit", "unit", "fractionUnit", "source", "revision", "stage", "subSystem");

    private static final Map<String, String> ASKS = Map.ofEntries(
            entry("currency", "which currency are the costs in, such as EUR?"),
            entry("cost", "which cost do parts get that the list has no readable cost of, such as 0?"),
            entry("massKg", "which mass in kg do parts get that the list has no mass of, such as 0.1?"),
            entry("massUnit", "are the masses in kg or in g?"),
            entry("unit", "in which unit are parts counted whose unit is not said?"),
            entry("fractionUnit", "in which unit (m, l, kg) are those counted that stand with fractions, and no unit is said?"),
            entry("source", "are parts bought or made (buy, make)?"),
            entry("revision", "which revision do parts have?"),
            entry("stage", "at which fit stage of the workshop are the parts fitted?"),
            entry("subSystem", "to which sub-system of the workshop do the parts belong?"));

    /** What is true of nearly every list, and stands in the mapping to be changed. */
    private static final Map<String, String> USUAL = Map.of("unit", "each", "source", "buy", "revision", "A");

    private static final int MOST_DECIMALS = 9;

    private final Brought brought;
    private final Answers answers;
    private final Known into;
    private final List<Doubt> doubts = new ArrayList<>();
    private final Map<String, String> missing = new LinkedHashMap<>();
    private final Map<String, DraftPart> parts = new LinkedHashMap<>();
    private final Options options = new Options();
    private final Levels levels;

    private Draft(Brought brought, Answers answers) {
        this.brought = brought;
        this.answers = answers;
        this.into = brought.into();
        this.levels = new Levels(answers, doubts);
    }

    static Draft of(Brought brought, Answers answers) {
        Draft draft = new Draft(brought, answers);
        brought.read().forEach(draft::table);
        draft.parts.values().removeIf(part -> !part.isUsed());
        draft.number();
        draft.ask();
        return draft;
    }

    static String asks(String key) {
        return ASKS.getOrDefault(key, "");
    }

    List<Doubt> doubts() {
        return doubts;
    }

    Map<String, String> missing() {
        return missing;
    }

    TreeMap<String, String> files() {
        return new DraftFiles(brought, List.copyOf(parts.values()), options, missing).files();
    }

    private void table(TableRead read) {
        options.columnsOf(read);
        levels.begin(read);
        Map<String, DraftPart> byName = new HashMap<>();
        for (Entry entry : read.entries()) {
            DraftPart part = parts.computeIfAbsent(key(entry), key -> new DraftPart(read, entry));
            part.seen(entry, read, doubts);
            if (entry.alternate()) {
                alternate(read, entry, part, byName.get(entry.name()));
            } else {
                byName.put(entry.name(), part);
                use(read, entry, part);
            }
        }
    }

    private static String key(Entry entry) {
        String number = entry.text(Role.PART_NUMBER);
        String unit = entry.quantity() == null ? "" : entry.quantity().unit();
        return number.isEmpty() || entry.name().equals(number)
                ? Words.plain(entry.fullName()) + '|' + entry.text(Role.ORDER_CODE) + '|' + entry.text(Role.MAKER_CODE) + '|' + unit
                : "#" + number;
    }

    private void alternate(TableRead read, Entry entry, DraftPart part, @Nullable DraftPart first) {
        if (first == null) {
            doubt(read, entry, Role.PREFERENCE, true, "'" + entry.name() + "' stands in for a part that is not in the list", Answers.LEAVE_OUT);
        } else {
            first.alternates().add(part);
            part.standsIn();
        }
    }

    private void use(TableRead read, Entry entry, DraftPart part) {
        Optional<DraftPart> parent = levels.parent(read, entry, part);
        for (Use use : uses(read, entry)) {
            Amount amount = inPieces(read, entry, use);
            if (amount.number().signum() > 0) {
                part.counted(amount.unit());
                if (parent.isPresent()) {
                    parent.get().contains().merge(part, amount.number(), BigDecimal::add);
                    part.standsIn();
                } else {
                    part.lines().add(new DraftPart.Line(entry.row(), entry.text(Role.NOTE), amount.number(), use.when()));
                }
            }
        }
    }

    /** A quantity with the orders that it holds for. */
    private record Use(int column, Amount amount, Map<String, List<String>> when) {}

    private List<Use> uses(TableRead read, Entry entry) {
        Amount plain = entry.quantity();
        if (entry.values().isEmpty()) {
            int column = column(read, Role.QUANTITY);
            return plain == null ? List.of() : List.of(new Use(column, plain, Map.of()));
        }
        Map<String, List<String>> marked = options.marked(read, entry, answers, doubts);
        if (marked.containsKey(Options.NOT_FITTED)) {
            return List.of();
        }
        Optional<String> counted = options.counted(read, entry);
        if (counted.isEmpty()) {
            Amount each = plain == null ? new Amount(BigDecimal.ONE, "") : plain;
            return List.of(new Use(column(read, Role.QUANTITY), each, marked));
        }
        List<Use> uses = new ArrayList<>();
        options.byQuantity(read, entry, counted.get()).forEach((amount, columns) -> {
            Map<String, List<String>> when = new LinkedHashMap<>(marked);
            when.put(counted.get(), columns.stream().map(options::value).toList());
            uses.add(new Use(columns.get(0).at(), amount, options.withoutAll(when)));
        });
        return uses;
    }

    private static int column(TableRead read, Role role) {
        return read.columns().stream()
                .filter(column -> column.role() == role)
                .map(Column::at)
                .findFirst()
                .orElse(read.table().firstColumn());
    }

    /** In the catalogue's units; pieces are whole. */
    private Amount inPieces(TableRead read, Entry entry, Use use) {
        Amount amount = use.amount();
        String unit = amount.unit();
        String written = entry.text(Role.UNIT);
        BigDecimal number = amount.number();
        if (unit.isEmpty() || unit.equals("mark")) {
            Optional<Amount> said = Amount.unit(written);
            if (said.isPresent()) {
                unit = said.get().unit();
                number = number.multiply(said.get().number());
            } else {
                if (!written.isEmpty()) {
                    doubt(read, entry, use.column(), "the unit '" + written + "' is not known: how many in each, set, m, l or kg?");
                }
                unit = lacking("unit");
            }
        }
        BigDecimal rounded = number.scale() > MOST_DECIMALS ? number.setScale(MOST_DECIMALS, RoundingMode.HALF_UP) : number;
        boolean whole = rounded.stripTrailingZeros().scale() <= 0;
        if (!whole && (unit.equals("each") || unit.equals("set"))) {
            String at = read.table().address(entry.row(), use.column());
            doubts.add(new Doubt(
                    at, entry.row(), false, "'" + entry.name() + "' is counted in pieces, " + number.toPlainString() + " of one", ""));
            unit = lacking("fractionUnit");
        }
        return new Amount(rounded.stripTrailingZeros(), unit);
    }

    /** What the mapping says where a list says nothing, or the mark that it is still open. */
    String lacking(String key) {
        return missing.computeIfAbsent(
                key,
                each -> brought.mapping().missing().getOrDefault(key, USUAL.getOrDefault(key, Mapping.OPEN)));
    }

    private void doubt(TableRead read, Entry entry, Role role, boolean open, String says, String suggests) {
        String at = read.table().address(entry.row(), column(read, role));
        if (answers.at(at).isEmpty()) {
            doubts.add(new Doubt(at, entry.row(), open, says, suggests));
        }
    }

    private void doubt(TableRead read, Entry entry, int column, String says) {
        String at = read.table().address(entry.row(), column);
        if (answers.at(at).isEmpty()) {
            doubts.add(new Doubt(at, entry.row(), true, says, ""));
        }
    }

    /** Numbers of parts: the list's own where they will do as such, else running ones. */
    private void number() {
        String initials = initials(brought.mapping().family());
        Set<String> taken = new HashSet<>(into.parts());
        int running = 0;
        for (DraftPart part : parts.values()) {
            String own = part.entry().text(Role.PART_NUMBER).equals(part.entry().name()) && part.read().columns().stream().noneMatch(column -> column.role() == Role.PART_NUMBER)
                    ? "" : Slugs.partNumber(part.entry().text(Role.PART_NUMBER));
            String number = own;
            while (number.isEmpty() || !taken.add(number)) {
                running++;
                number = initials + "-" + String.format(Locale.ROOT, "%04d", running);
            }
            part.number(number);
        }
    }

    private static String initials(String family) {
        StringBuilder initials = new StringBuilder();
        for (String word : family.split("-", -1)) {
            if (!word.isEmpty() && initials.length() < 4) {
                initials.append(word.charAt(0));
            }
        }
        return initials.length() < 2
                ? family.substring(0, Math.min(4, family.length())).toUpperCase(Locale.ROOT)
                : initials.toString().toUpperCase(Locale.ROOT);
    }

    private void ask() {
        boolean costs = false;
        for (DraftPart part : parts.values()) {
            costs |= part.cost().isPresent();
            need(part.cost().isPresent(), "cost");
            need(part.mass().isPresent() || !part.contains().isEmpty(), "massKg");
            need(!part.entry().text(Role.REVISION).isEmpty(), "revision");
            need(!part.contains().isEmpty(), "source");
            if (part.mass().isPresent() && part.massUnit().isEmpty()) {
                lacking("massUnit");
            }
        }
        if (into.isNew() || costs) {
            currency();
        }
        if (!into.isNew() && into.stages().size() != 1) {
            lacking("stage");
        }
        boolean strange = parts.values().stream().anyMatch(part -> !into.subSystems().contains(part.subSystem()));
        if (!into.isNew() && strange) {
            lacking("subSystem");
        }
    }

    private void need(boolean said, String key) {
        if (!said && !into.defaults().contains(key)) {
            lacking(key);
        }
    }

    private void currency() {
        Map<String, String> said = brought.mapping().missing();
        String found = Currencies.of(brought.read());
        if (said.containsKey("currency")) {
            missing.put("currency", said.get("currency"));
        } else {
            missing.put("currency", found.isEmpty() ? into.currency().isEmpty() ? Mapping.OPEN : into.currency() : found);
        }
        String currency = missing.get("currency");
        if (!into.currency().isEmpty() && !currency.equals(Mapping.OPEN) && !currency.equals(into.currency())) {
            String at = "missing/currency";
            if (answers.at(at).isEmpty()) {
                doubts.add(new Doubt(
                        at,
                        0,
                        true,
                        "the list counts in " + currency + ", the workshop in " + into.currency()
                                + ": convert the list, or say 'leave out' to bring it in without costs",
                        Answers.LEAVE_OUT));
            }
        }
    }

    /** The heading of a column, for a question. */
    static String letters(int column) {
        return Sheet.letters(column);
    }
}

package boltlore.bring;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/** What the lists of a file come to as parts and lines of a catalogue, and what that leaves open. */
final class Draft {

    private static final int MOST_DECIMALS = 9;

    private final Brought brought;
    private final Answers answers;
    private final List<Doubt> doubts = new ArrayList<>();
    private final Missing missing;
    private static final int MANY_NAMES = 3;

    private final Map<String, DraftPart> parts = new LinkedHashMap<>();
    private final Options options = new Options();
    private final Levels levels;

    private Draft(Brought brought, Answers answers) {
        this.brought = brought;
        this.answers = answers;
        this.missing = new Missing(brought, answers, doubts);
        this.levels = new Levels(answers, doubts);
    }

    static Draft of(Brought brought, Answers answers) {
        Draft draft = new Draft(brought, answers);
        brought.read().forEach(draft::table);
        draft.parts.values().removeIf(part -> !part.isUsed());
        new PartNumbers(brought).give(draft.parts.values());
        draft.missing.ask(draft.parts.values());
        return draft;
    }

    List<Doubt> doubts() {
        return doubts;
    }

    Map<String, String> missing() {
        return missing.said();
    }

    SortedMap<String, String> files() {
        return new DraftFiles(brought, List.copyOf(parts.values()), options, missing.said()).files();
    }

    private void table(TableRead read) {
        options.columnsOf(read);
        levels.begin(read);
        boolean perPack = perPack(read);
        Map<String, DraftPart> byName = new HashMap<>();
        Set<String> kinds = kinds(read);
        Map<List<Object>, Integer> said = new HashMap<>();
        for (Entry each : read.entries()) {
            again(read, each, said);
            Entry entry = kinds.contains(each.text(Role.PART_NUMBER)) ? each.without(Role.PART_NUMBER) : each;
            DraftPart part = parts.computeIfAbsent(key(entry), key -> new DraftPart(read, entry));
            part.seen(entry, read, doubts);
            if (perPack) {
                part.perPack();
            }
            if (entry.alternate()) {
                alternate(read, entry, part, byName.get(entry.name()));
            } else {
                byName.put(entry.name(), part);
                use(read, entry, part);
            }
        }
    }

    /** A row that says what one above it says in every cell: needed twice, or copied by mistake. */
    private void again(TableRead read, Entry entry, Map<List<Object>, Integer> said) {
        String quantity = entry.quantity() == null ? "" : entry.quantity().toString();
        Integer first = said.putIfAbsent(
                List.of(entry.section(), entry.texts(), quantity, entry.values(), entry.alternate()), entry.row());
        if (first != null) {
            String says = "the row says the same as row " + first
                    + ": is it needed once more (add), or written twice by mistake (leave out)?";
            doubt(read, entry, Role.NAME, true, says, "add");
        }
    }

    /** What stands as the number of many different names says of which kind they are, such as 'bought', and numbers none. */
    private Set<String> kinds(TableRead read) {
        Map<String, Set<String>> names = new LinkedHashMap<>();
        read.entries()
                .forEach(entry -> names.computeIfAbsent(entry.text(Role.PART_NUMBER), number -> new HashSet<>())
                        .add(Words.plain(entry.name())));
        names.remove("");
        names.values().removeIf(each -> each.size() < MANY_NAMES);
        names.forEach((number, each) -> doubts.add(new Doubt(
                read.table().address(read.table().firstHead(), read.table().firstColumn()),
                0,
                false,
                "'" + number + "' stands as the number of " + each.size()
                        + " different names: it is taken for none of a part",
                "")));
        return names.keySet();
    }

    /** Where a list says how many are sold together, its prices may be for one or for all of those: that is asked. */
    private boolean perPack(TableRead read) {
        Optional<Column> cost = read.columns().stream()
                .filter(column -> column.role() == Role.COST)
                .findFirst();
        boolean packs = read.columns().stream().anyMatch(column -> column.role() == Role.PACK);
        if (cost.isEmpty() || !packs) {
            return false;
        }
        String at = read.table().address(read.table().firstHead(), cost.get().at());
        Optional<String> answer = answers.at(at);
        if (answer.isEmpty()) {
            doubts.add(new Doubt(at, 0, true, "is the cost that of one piece (piece), or of a pack (pack)?", "piece"));
        }
        return answer.map("pack"::equals).orElse(false);
    }

    private static String key(Entry entry) {
        String number = entry.text(Role.PART_NUMBER);
        String unit = entry.quantity() == null ? "" : entry.quantity().unit();
        return number.isEmpty() || entry.name().equals(number)
                ? Words.plain(entry.fullName())
                        + '|'
                        + entry.text(Role.ORDER_CODE)
                        + '|'
                        + entry.text(Role.MAKER_CODE)
                        + '|'
                        + unit
                : "#" + number;
    }

    private void alternate(TableRead read, Entry entry, DraftPart part, @Nullable DraftPart first) {
        if (first == null) {
            doubt(
                    read,
                    entry,
                    Role.PREFERENCE,
                    true,
                    "'" + entry.name() + "' stands in for a part that is not in the list",
                    Answers.LEAVE_OUT);
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
                    DraftPart.Line line =
                            new DraftPart.Line(entry.row(), DraftPart.note(entry), amount.number(), use.when());
                    part.add(line).ifPresent(first -> addedTo(read, entry, first));
                }
            }
        }
    }

    private void addedTo(TableRead read, Entry entry, int first) {
        String at = read.table().address(entry.row(), column(read, Role.QUANTITY));
        String says =
                "'" + entry.name() + "' stands in row " + first + " for the same orders: the two counts are added";
        doubts.add(new Doubt(at, entry.row(), false, says, ""));
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
        return column(read.columns(), role, read.table());
    }

    /** The first column of that role, or the table's first. */
    static int column(List<Column> columns, Role role, Table table) {
        return columns.stream()
                .filter(column -> column.role() == role)
                .map(Column::at)
                .findFirst()
                .orElse(table.firstColumn());
    }

    /** In the catalogue's units; pieces are whole. */
    private Amount inPieces(TableRead read, Entry entry, Use use) {
        Amount amount = inUnit(read, entry, use);
        BigDecimal number = amount.number();
        BigDecimal rounded =
                number.scale() > MOST_DECIMALS ? number.setScale(MOST_DECIMALS, RoundingMode.HALF_UP) : number;
        boolean whole = rounded.stripTrailingZeros().scale() <= 0;
        String unit = amount.unit();
        if (!whole && (unit.equals("each") || unit.equals("set"))) {
            String says = "'" + entry.name() + "' is counted in pieces, " + number.toPlainString() + " of one";
            doubts.add(new Doubt(read.table().address(entry.row(), use.column()), entry.row(), false, says, ""));
            unit = missing.lacking("fractionUnit");
        }
        return new Amount(rounded.stripTrailingZeros(), unit);
    }

    private Amount inUnit(TableRead read, Entry entry, Use use) {
        Amount amount = use.amount();
        if (!amount.unit().isEmpty() && !amount.unit().equals("mark")) {
            return amount;
        }
        String written = entry.text(Role.UNIT);
        Optional<Amount> said = Amount.unit(written);
        if (said.isPresent()) {
            return new Amount(
                    amount.number().multiply(said.get().number()), said.get().unit());
        }
        if (!written.isEmpty()) {
            String says = "the unit '" + written + "' is not known: how many in each, set, m, l or kg?";
            doubt(read, entry, use.column(), says);
        }
        return new Amount(amount.number(), missing.lacking("unit"));
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
}

package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Position;
import boltlore.catalogue.Stage;
import boltlore.catalogue.json.EntryEdit.What;
import boltlore.explanation.ConditionWords;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A sheet of a family's workbook beside its lines, as it is written and as it is read back: a row a position, a value of an
 * option, or a limit.
 *
 * @param <R> what a row is about
 * @param what it is in the catalogue
 * @param title of the sheet
 * @param fields its columns, that of the name first
 * @param rows what stands in the family
 */
record EntryTable<R>(What what, String title, List<EntryTable.Field<R>> fields, List<R> rows) {

    private static final int WIDE = 60;
    private static final String AS_CONDITION = ", as a condition";

    /** The heading of a value's option. */
    static final String OPTION = "Option";

    /**
     * A column.
     *
     * @param key of the catalogue; empty where the column only tells
     * @param ofOption whether it tells of a value's option
     * @param answers what may be chosen; empty where anything may be written
     */
    record Field<R>(
            String key, String heading, boolean ofOption, List<String> answers, Function<R, @Nullable String> value) {

        private static <R> Field<R> of(String key, String heading, Function<R, @Nullable String> value) {
            return new Field<>(key, heading, false, List.of(), value);
        }

        private Field<R> oneOf(List<String> some) {
            return new Field<>(key, heading, ofOption, some, value);
        }

        private Field<R> onOption() {
            return new Field<>(key, heading, true, answers, value);
        }

        String keyOrTells() {
            return key.isEmpty() ? "=words" : key;
        }

        boolean isCondition() {
            return heading.endsWith(AS_CONDITION);
        }

        String text(R row) {
            String text = value.apply(row);
            return text == null ? "" : text;
        }
    }

    /** A value with its option; of a question with several answers the question and the answer. */
    record Value(Option option, OptionValue value) {

        private String asked() {
            return option.group() == null
                    ? option.name().text()
                    : option.group().name().text();
        }

        private String named() {
            return option.group() == null ? value.value() : option.group().value();
        }

        private String asks() {
            return option.group() == null ? option.asks() : option.group().asks();
        }
    }

    /** All of them. */
    static List<EntryTable<?>> of(Catalogue catalogue, Family family) {
        ConditionWords words = new ConditionWords(family);
        return List.of(positions(catalogue, family, words), options(family), limits(family, words));
    }

    private static EntryTable<Position> positions(Catalogue catalogue, Family family, ConditionWords words) {
        List<String> stages =
                catalogue.workshop().stages().stream().map(Stage::name).toList();
        return new EntryTable<>(
                What.POSITION,
                "Positions",
                List.of(
                        Field.of(
                                "position",
                                FamilySheet.POSITION,
                                row -> row.name().text()),
                        Field.of("says", "Says", row -> row.says().english()),
                        Field.<Position>of("subSystem", "System", Position::subSystem)
                                .oneOf(catalogue.workshop().subSystems()),
                        Field.<Position>of("stage", "Stage", Position::stage).oneOf(stages),
                        Field.of("bag", "Bag or crate", Position::bag),
                        Field.of("under", "Under", EntryTable::under),
                        Field.<Position>of("fill", "Lines in a kit", row -> written(row.fill()))
                                .oneOf(Stream.of(Fill.values())
                                        .map(EntryTable::written)
                                        .toList()),
                        Field.of("required", "Required" + AS_CONDITION, row -> json(row.due())),
                        Field.of("", "Required in orders with", row -> words(row.due(), words))),
                family.positions());
    }

    private static @Nullable String under(Position position) {
        return position.under() == null ? null : position.under().text();
    }

    private static EntryTable<Value> options(Family family) {
        List<Value> values = new ArrayList<>();
        family.options().stream()
                .filter(option -> option.scale() == null)
                .forEach(option -> option.values().stream()
                        .filter(value -> option.group() == null || value.value().equals(Option.YES))
                        .forEach(value -> values.add(new Value(option, value))));
        return new EntryTable<>(
                What.VALUE,
                "Options",
                List.of(
                        Field.of("value", "Value", Value::named),
                        Field.of("says", "Says", row -> row.value().says().english()),
                        Field.of("option", OPTION, Value::asked).onOption(),
                        Field.of("asks", "Question", Value::asks).onOption(),
                        Field.<Value>of("choose", "Answers", row -> row.option().group() == null ? "" : "several")
                                .onOption()
                                .oneOf(List.of("one", "several")),
                        Field.<Value>of(
                                        "default",
                                        "Offered first",
                                        row -> row.value()
                                                        .value()
                                                        .equals(row.option().usual())
                                                ? FamilySheet.MARK
                                                : "")
                                .onOption()
                                .oneOf(List.of(FamilySheet.MARK))),
                values);
    }

    private static EntryTable<Limit> limits(Family family, ConditionWords words) {
        return new EntryTable<>(
                What.LIMIT,
                "Limits",
                List.of(
                        Field.of("limit", "Limit", Limit::name),
                        Field.of("because", "Because", Limit::because),
                        Field.of("source", "Source", Limit::source),
                        Field.of("never", "Never" + AS_CONDITION, row -> row.then() == null ? json(row.when()) : ""),
                        Field.of("when", "When" + AS_CONDITION, row -> row.then() == null ? "" : json(row.when())),
                        Field.of("then", "Then" + AS_CONDITION, row -> json(row.then())),
                        Field.of("", "No order may have", row -> words(row.forbids(), words))),
                family.limits());
    }

    private static String written(Fill fill) {
        return fill.name().toLowerCase(Locale.ROOT);
    }

    private static String json(@Nullable Condition condition) {
        return condition == null || condition.isAlways() ? "" : ConditionText.of(condition);
    }

    private static String words(@Nullable Condition condition, ConditionWords words) {
        return condition == null || condition.isAlways() ? "" : words.of(condition);
    }

    /** The rows as texts by their names, with what only tells under keys that begin with '='. */
    Map<String, SortedMap<String, String>> cells() {
        Map<String, SortedMap<String, String>> cells = new LinkedHashMap<>();
        for (R row : rows) {
            SortedMap<String, String> texts = new TreeMap<>();
            fields.forEach(field -> FamilyRows.put(texts, field.keyOrTells(), field.text(row)));
            cells.put(name(texts), texts);
        }
        return cells;
    }

    /** A row's name, of a value together with that of its option. */
    String name(SortedMap<String, String> cells) {
        String own = cells.getOrDefault(nameKey(), "");
        return what == What.VALUE ? cells.getOrDefault("option", "") + FamilySheet.IS + own : own;
    }

    /** The heading above the cells of that key; that of the name for an unknown key. */
    String heading(String key) {
        return fields.stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElse(fields.get(0))
                .heading();
    }

    /** The key of the column that names a row. */
    String nameKey() {
        return fields.get(0).key();
    }

    PageBuilder page() {
        TableSpec<R> table = TableSpec.named(title.toLowerCase(Locale.ROOT));
        for (Field<R> field : fields) {
            String key = field.key().isEmpty() ? "words" : field.key();
            Kind kind = field.answers().isEmpty()
                    ? Kind.text()
                    : Kind.text().oneOf(field.answers().toArray(new String[0]));
            table.column(new Column(key, field.heading(), kind).atMost(WIDE), row -> Cell.of(field.text(row)));
        }
        return Page.named(title).landscape().title(title).add(table.of(rows));
    }
}

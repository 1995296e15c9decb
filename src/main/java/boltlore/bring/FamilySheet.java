package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.explanation.ConditionWords;
import boltlore.json.JsonOut;
import boltlore.measure.OptionName;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A family as a sheet that people edit: a row a line, a column for each value of each option, with a mark where the line is
 * fitted. An option without a mark does not matter. What marks cannot say stands as a condition of the catalogue's own.
 */
public final class FamilySheet {

    static final String LINE = "Line";
    static final String POSITION = "Position";
    static final String NAME = "Name";
    static final String UNIT = "Unit";
    static final String PART = "Part number";
    static final String QUANTITY = "Quantity";
    static final String NOTE = "Note";
    static final String OTHERWISE = "Condition, where marks cannot say it";

    /** Between an option and its value, in a heading. */
    static final String IS = " = ";

    static final String MARK = "x";

    /** A line with the position that it stands at. */
    private record Row(Position position, Line line, Part part) {}

    private FamilySheet() {}

    /** The sheet, with what may be chosen and what no order may do beside it. */
    public static Report compose(Catalogue catalogue, Family family) {
        String title = "Lines of " + family.says().english();
        List<Row> rows = family.positions().stream()
                .flatMap(position ->
                        position.lines().stream().map(line -> new Row(position, line, catalogue.part(line.part()))))
                .toList();
        FamilyRows written = FamilyRows.of(catalogue, family);
        ReportBuilder report = Report.named(family.name() + "-lines", title)
                .about("Catalogue " + catalogue.revision())
                .by(catalogue.workshop().name())
                .page(Page.named("Lines")
                        .landscape()
                        .frozen(3)
                        .title(title)
                        .note(
                                "A mark where the line is fitted; an option without a mark does not matter. Position, line, part,"
                                        + " quantity, marks, condition and note are taken back by 'boltlore bring --onto', and so are the"
                                        + " sheets Positions, Options and Limits; what else is changed is told, and not taken. A new row is a new line,"
                                        + " position, value or limit; a new value may have a column of its own here, headed as the others.")
                        .note(written.mark().written() + ". By this it is known what the workbook was written from.")
                        .add(lines(family).of(rows)));
        EntryTable.of(catalogue, family).forEach(table -> report.page(table.page()));
        return report.page(written.page()).build();
    }

    private static TableSpec<Row> lines(Family family) {
        TableSpec<Row> table = TableSpec.<Row>named("lines")
                .text("position", POSITION, row -> row.position().name().text())
                .text("line", LINE, row -> row.line().name().text())
                .text("part", PART, row -> row.part().number().text())
                .text("name", NAME, row -> row.part().name().english())
                .quantity("quantity", QUANTITY, "", row -> row.line().quantity())
                .text("unit", UNIT, row -> row.part().unit());
        for (Option option : family.options()) {
            for (OptionValue value : option.values()) {
                String heading = option.name() + IS + value.value();
                Column column = new Column(
                        option.name() + "-" + value.value(),
                        heading,
                        Kind.text().oneOf(MARK));
                table.column(column, row -> mark(row.line().when(), option.name(), value.value()));
            }
        }
        ConditionWords words = new ConditionWords(family);
        return table.remark("line", row -> reason(row, family, words))
                .text("otherwise", OTHERWISE, 40, row -> otherwise(row.line().when()))
                .text("note", NOTE, row -> row.line().note());
    }

    /** Why the line is in a kit: 'In orders with: Early body. It holds up: Motor.' */
    private static String reason(Row row, Family family, ConditionWords words) {
        Condition when = row.line().when();
        String orders = when.isAlways() ? "In every order." : "In orders with: " + words.of(when) + ".";
        String carried = row.line().carries().stream()
                .map(carries -> family.position(carries)
                        .map(position -> position.says().english())
                        .orElse(carries.text()))
                .collect(Collectors.joining(", "));
        return carried.isEmpty() ? orders : orders + " It holds up: " + carried + ".";
    }

    private static Cell mark(Condition when, OptionName option, String value) {
        boolean marked = marks(when)
                .map(marks -> marks.getOrDefault(option.text(), new TreeSet<>()).contains(value))
                .orElse(false);
        return marked ? Cell.of(MARK) : Cell.EMPTY;
    }

    /** Values by option, where the condition is that each of those options has one of its values. */
    static Optional<Map<String, SortedSet<String>>> marks(Condition when) {
        Map<String, SortedSet<String>> marks = new TreeMap<>();
        List<Condition> all = when instanceof Condition.All conjunction ? conjunction.conditions() : List.of(when);
        for (Condition each : all) {
            if (!(each instanceof Condition.Is is) || marks.put(is.option().text(), is.values()) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(marks);
    }

    /** The condition as the catalogue writes it, where marks cannot say it; else empty. */
    static String otherwise(Condition when) {
        return marks(when).isPresent() ? "" : ConditionText.of(when);
    }

    /** The condition as the catalogue writes it. */
    static JsonOut json(Condition when) {
        if (when instanceof Condition.Is is) {
            return JsonOut.object().put(is.option().text(), values(is.values()));
        }
        if (when instanceof Condition.Filled filled) {
            return JsonOut.object().put("filled", filled.position().text());
        }
        if (when instanceof Condition.Not not) {
            return JsonOut.object().put("not", json(not.condition()));
        }
        boolean all = when instanceof Condition.All;
        return marks(when)
                .filter(marks -> all)
                .map(FamilySheet::json)
                .orElseGet(
                        () -> JsonOut.object().put(all ? "all" : "any", JsonOut.list(when.parts(), FamilySheet::json)));
    }

    static JsonOut json(Map<String, SortedSet<String>> marks) {
        JsonOut.Members json = JsonOut.object();
        marks.forEach((option, values) -> json.put(option, values(values)));
        return json;
    }

    private static JsonOut values(SortedSet<String> values) {
        return values.size() == 1 ? JsonOut.text(values.first()) : JsonOut.texts(new ArrayList<>(values));
    }

    /** A quantity without zeros at its end. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}

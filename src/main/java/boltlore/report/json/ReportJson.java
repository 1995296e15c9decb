package boltlore.report.json;

import boltlore.findings.Finding;
import boltlore.json.JsonOut;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Printed;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A report as data: what was found, facts by key, tables by name with a row an object, what each column measures, and
 * what people are told in words. Numbers are numbers with the digits that are known; keys are English whatever the
 * report's language; how the sheet looks is left out.
 */
public final class ReportJson {

    private ReportJson() {}

    public static JsonOut.Members encode(Report report) {
        Map<String, List<JsonOut>> rows = new LinkedHashMap<>();
        Map<String, JsonOut.Members> columns = new LinkedHashMap<>();
        report.tables().filter(table -> !table.name().equals("findings")).forEach(table -> {
            rows(table, rows.computeIfAbsent(table.name(), name -> new ArrayList<>()));
            columns(table, columns.computeIfAbsent(table.name(), name -> JsonOut.object()));
        });
        JsonOut.Members tables = JsonOut.object();
        rows.forEach((name, all) -> tables.put(name, JsonOut.rows(all)));
        JsonOut.Members described = JsonOut.object();
        columns.forEach(described::put);
        return JsonOut.object()
                .put("report", report.file())
                .put("title", report.title())
                .put("subject", report.subject())
                .put("issuedBy", report.author())
                .put("dated", report.dated().toString())
                .put("language", report.language())
                .put("findings", JsonOut.list(report.findings().all(), ReportJson::finding))
                .put("facts", facts(report))
                .put("columns", described)
                .put("tables", tables)
                .put("words", SpokenJson.encode(report));
    }

    /** A finding with its sentence and the arguments that the sentence was made of. */
    public static JsonOut.Members finding(Finding finding) {
        JsonOut.Members data = JsonOut.object();
        finding.data().forEach((name, value) -> {
            if (value instanceof BigDecimal number) {
                data.put(name, JsonOut.number(number));
            } else if (value instanceof Integer whole) {
                data.put(name, whole);
            } else if (value instanceof Collection<?> several) {
                data.put(name, JsonOut.texts(several));
            } else if (value instanceof Finding inner) {
                data.put(name, finding(inner));
            } else {
                data.put(name, String.valueOf(value));
            }
        });
        return JsonOut.object()
                .put("kind", finding.kind().code())
                .put("severity", finding.severity().code())
                .put("subject", finding.subject())
                .putIfAny("orders", finding.orders())
                .put("sentence", finding.says())
                .put("data", data);
    }

    private static JsonOut facts(Report report) {
        JsonOut.Members facts = JsonOut.object();
        report.facts()
                .forEach(fact -> facts.put(
                        fact.key(),
                        JsonOut.object()
                                .put("says", fact.says())
                                .put("value", value(fact.kind(), fact.cell()))
                                .putIfAny("unit", fact.unit())));
        return facts;
    }

    /** What stands above each column, and in which unit or currency its numbers are. */
    private static void columns(Table table, JsonOut.Members described) {
        for (Column column : table.columns()) {
            if (!column.kind().form().isByHand()) {
                described.putOnce(
                        column.key(),
                        column.key(),
                        JsonOut.object().put("says", column.heading()).putIfAny("unit", column.unit()));
            }
        }
    }

    private static void rows(Table table, List<JsonOut> rows) {
        Map<String, String> groups = new LinkedHashMap<>();
        for (Row row : table.rows()) {
            if (row.kind() == Row.RowKind.GROUP) {
                groups.put(row.group(), row.words());
            }
            if (row.isPlain()) {
                rows.add(row(table, row, groups));
            }
        }
    }

    private static JsonOut row(Table table, Row row, Map<String, String> groups) {
        JsonOut.Members members = JsonOut.object();
        table.about().forEach(members::put);
        if (!row.group().isEmpty()) {
            members.put("group", groups.getOrDefault(row.group(), row.group()));
        }
        for (int i = 0; i < table.columns().size(); i++) {
            Column column = table.columns().get(i);
            if (!column.kind().form().isByHand()) {
                members.put(column.key(), value(column.kind(), row.cells().get(i)));
            }
        }
        row.codes().forEach(members::put);
        return members;
    }

    private static JsonOut value(Kind kind, Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return JsonOut.number(Printed.data(kind, figure.value()));
        }
        if (cell instanceof Cell.Worked worked) {
            return JsonOut.number(Printed.data(kind, worked.result()));
        }
        return cell == Cell.EMPTY ? JsonOut.nothing() : JsonOut.text(Printed.inColumn(kind, cell));
    }
}

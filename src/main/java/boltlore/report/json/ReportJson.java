package boltlore.report.json;

import boltlore.findings.Finding;
import boltlore.json.JsonOut;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Particular;
import boltlore.report.Printed;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A report as data: what was found, facts by key, tables by name with a row an object. Numbers are numbers with the
 * digits of the sheet; keys are English whatever the report's language; what is only there for the eye is left out.
 */
public final class ReportJson {

    private ReportJson() {}

    public static JsonOut.Members encode(Report report) {
        JsonOut.Members facts = JsonOut.object();
        Map<String, List<JsonOut>> rows = new LinkedHashMap<>();
        report.pages().forEach(page -> {
            page.particulars().forEach(some -> some.entries().forEach(entry -> fact(facts, some.name(), entry)));
            page.tables()
                    .filter(table -> !table.name().equals("findings"))
                    .forEach(table -> rows(table, rows.computeIfAbsent(table.name(), name -> new ArrayList<>())));
        });
        JsonOut.Members tables = JsonOut.object();
        rows.forEach((name, all) -> tables.put(name, JsonOut.list(all)));
        return JsonOut.object()
                .put("report", report.file())
                .put("title", report.title())
                .put("subject", report.subject())
                .put("issuedBy", report.author())
                .put("dated", report.dated().toString())
                .put("language", report.language())
                .put("findings", JsonOut.list(report.findings().all(), ReportJson::finding))
                .put("facts", facts)
                .put("tables", tables);
    }

    /** A finding with its sentence and the arguments that the sentence was made of. */
    public static JsonOut.Members finding(Finding finding) {
        JsonOut.Members data = JsonOut.object();
        finding.data().forEach((name, value) -> {
            if (value instanceof BigDecimal number) {
                data.put(name, JsonOut.number(number));
            } else if (value instanceof Integer whole) {
                data.put(name, whole);
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
                .put("sentence", finding.says())
                .put("data", data);
    }

    /** Facts that stand on several pages are told once; what differs under one key bears the block's name. */
    private static void fact(JsonOut.Members facts, String block, Particular entry) {
        if (entry.kind().form().isByHand()) {
            return;
        }
        String unit = Printed.unit(entry.kind()).strip();
        JsonOut fact = JsonOut.object()
                .put("says", entry.label())
                .put("value", value(entry.kind(), entry.cell()))
                .putIfAny("unit", unit);
        facts.putOnce(entry.key(), block + "." + entry.key(), fact);
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
        return members;
    }

    private static JsonOut value(Kind kind, Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return JsonOut.number(Printed.rounded(kind, figure.value()));
        }
        if (cell instanceof Cell.Worked worked) {
            return JsonOut.number(Printed.rounded(kind, worked.result()));
        }
        return cell == Cell.EMPTY ? JsonOut.nothing() : JsonOut.text(Printed.inColumn(kind, cell));
    }
}

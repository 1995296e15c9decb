package boltlore.trades.testing.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.Workbook;
import boltlore.report.csv.CsvWriter;
import boltlore.trades.testing.Box;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestRow;
import boltlore.trades.testing.written.RecordJson;
import java.util.List;
import java.util.stream.Stream;

/** The files that the readings of one kit are written into: a line a box, as CSV and as JSON. */
public final class EmptyRecord {

    /** Within the folder of the sheets. */
    public static final String CSV = "csv/" + TestSheet.FILE + "-record.csv";

    public static final String JSON = "json/" + TestSheet.FILE + "-record.json";

    private EmptyRecord() {}

    public static List<SheetFile> of(TestPlan plan) {
        TableBuilder table = Table.named("record").columns(columns());
        String limits = plan.limits();
        int number = 0;
        for (TestRow row : plan.rows().toList()) {
            number++;
            fill(table, number, row, plan, limits);
        }
        Workbook record = Workbook.of(TestSheet.FILE, "Record")
                .page(Page.named("Record").add(table))
                .build();
        Stream<SheetFile> csv = new CsvWriter().write(record).stream().map(file -> file.under("csv"));
        return Stream.concat(csv, Stream.of(SheetFile.utf8(JSON, RecordJson.empty(plan))))
                .toList();
    }

    /** English, as files go by them; what is tested is said in the order's language. */
    private static Column[] columns() {
        return Stream.of(
                        "order",
                        "limits",
                        "no",
                        "tested",
                        "where",
                        "write",
                        "limit",
                        "box",
                        "value",
                        "unit",
                        "instrument",
                        "by",
                        "on")
                .map(name -> Column.text(name, name))
                .toArray(Column[]::new);
    }

    private static void fill(TableBuilder table, int number, TestRow row, TestPlan plan, String limits) {
        TestWords words = TestWords.in(plan.bill().order().language());
        for (Box box : row.boxes()) {
            table.row()
                    .put("order", plan.order())
                    .put("limits", limits)
                    .put("no", Integer.toString(number))
                    .put("tested", row.test().says().in(words.language()))
                    .put("where", Places.of(row, words))
                    .put("write", words.quantity(box))
                    .put("limit", words.limit(row))
                    .put("box", box.key())
                    .put("unit", box.unit());
        }
    }
}

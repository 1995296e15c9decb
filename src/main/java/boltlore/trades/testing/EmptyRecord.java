package boltlore.trades.testing;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.SheetFile;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.csv.CsvWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The files that the readings of one kit are written into: a line a box, as CSV and as JSON. */
final class EmptyRecord {

    /** Within the folder of the sheets. */
    static final String CSV = "csv/" + TestSheet.FILE + "-record.csv";

    static final String JSON = "json/" + TestSheet.FILE + "-record.json";

    /** A box with the number of its test. */
    private record Line(String no, TestRow row, Box box) {}

    private EmptyRecord() {}

    static List<SheetFile> write(TestPlan plan) {
        List<Line> lines = lines(plan);
        Report record = Report.named(TestSheet.FILE, "Record")
                .page(Page.named("Record").add(table(plan, lines)))
                .build();
        Stream<SheetFile> csv = new CsvWriter().write(record).stream().map(file -> file.under("csv"));
        return Stream.concat(csv, Stream.of(SheetFile.utf8(JSON, RecordJson.empty(plan))))
                .toList();
    }

    private static List<Line> lines(TestPlan plan) {
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (TestRow row : plan.rows().toList()) {
            String no = Integer.toString(++number);
            row.boxes().forEach(box -> lines.add(new Line(no, row, box)));
        }
        return lines;
    }

    /** What the box takes, where it is not the result itself. */
    private static String quantity(Line line, TestWords words) {
        String quantity = words.quantity(line.box());
        return quantity.isEmpty() ? "" : ". " + quantity;
    }

    /** Which box of the record belongs to which test of the sheet, with its limit. */
    static TableBuilder boxes(TestPlan plan, TestWords words) {
        TableSpec<Line> boxes = TableSpec.<Line>named("boxes")
                .text("no", words.say("no"), Line::no)
                .text("test", words.say("tested"), 44, line -> words.tested(line.row()) + quantity(line, words))
                .code("test-id", line -> line.row().key())
                .text("box", words.say("box"), 48, line -> line.box().key())
                .text("limit", words.say("limit"), 24, line -> words.limit(line.row()))
                .quantity(
                        "least",
                        words.say("record.least"),
                        "",
                        line -> line.row().limit().leastNumber())
                .quantity(
                        "most",
                        words.say("record.most"),
                        "",
                        line -> line.row().limit().mostNumber())
                .text(
                        "unit",
                        words.say("unit"),
                        line -> TestWords.unit(line.row().unit()))
                .text("basis", words.say("record.basis"), 44, line -> words.basis(line.row()))
                .quantity("resistor", "Ro", "kΩ", line -> kiloohm(line.row().suitedOhm()));
        return boxes.of(lines(plan));
    }

    private static @Nullable BigDecimal kiloohm(@Nullable BigDecimal ohm) {
        return ohm == null ? null : ohm.movePointLeft(3);
    }

    /** Headings in English, as files go by them; what is tested is said in the order's language. */
    private static TableBuilder table(TestPlan plan, List<Line> lines) {
        TestWords words = TestWords.in(plan.bill().order().language());
        String limits = plan.limits();
        TableSpec<Line> table = TableSpec.<Line>named("record")
                .text("order", "order", line -> plan.order())
                .text("limits", "limits", line -> limits)
                .text("no", "no", Line::no)
                .text("tested", "tested", line -> line.row().test().says().in(words.language()))
                .text("where", "where", line -> words.place(line.row().at()))
                .text("write", "write", line -> words.quantity(line.box()))
                .text("limit", "limit", line -> words.limit(line.row()))
                .text("box", "box", line -> line.box().key())
                .box(Column.text("value", "value"))
                .text("unit", "unit", line -> line.box().unit());
        Stream.of("instrument", "by", "on").forEach(name -> table.box(Column.text(name, name)));
        return table.of(lines);
    }
}

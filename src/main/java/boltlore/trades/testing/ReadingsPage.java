package boltlore.trades.testing;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.util.List;

/** Every test with its readings, in the order of the test sheet; a reading that was replaced stays and says so. */
final class ReadingsPage {

    private final TestWords words;
    private final VerdictWords says;
    private final TableBuilder table;
    private int number;

    private ReadingsPage(TestWords words) {
        this.words = words;
        this.says = new VerdictWords(words);
        this.table = Table.named("readings")
                .columns(
                        Column.whole("no", words.say("no")),
                        Column.text("tested", words.say("tested")).atMost(46),
                        Column.text("limit", words.say("limit")).atMost(24),
                        Column.text("value", words.say("reading")),
                        Column.text("result", words.say("report.result")),
                        Column.text("verdict", words.say("report.verdict")),
                        Column.text("box", words.say("box")).atMost(24),
                        Column.text("serial", words.say("serial")),
                        Column.text("who", words.say("report.who")),
                        Column.text("on", words.say("report.on")));
    }

    static PageBuilder compose(Verdict verdict, TestWords words) {
        ReadingsPage page = new ReadingsPage(words);
        verdict.rows().forEach(page::rows);
        return Page.named(words.say("report.rows"))
                .title(words.say("report.rows"))
                .add(page.table);
    }

    private void rows(JudgedRow judged) {
        number++;
        RowBuilder first = table.row().put("no", number).put("tested", says.tested(judged.row()));
        first.put("limit", words.limit(judged.row()))
                .put("result", says.found(judged))
                .put("verdict", says.verdict(judged.judgement()))
                .put("box", judged.row().key());
        List<Reading> readings = judged.readings();
        if (readings.size() == 1) {
            reading(first, judged, readings.get(0));
        } else {
            readings.forEach(each -> reading(table.row(), judged, each));
        }
    }

    private void reading(RowBuilder row, JudgedRow judged, Reading reading) {
        String sign = judged.row().workedOut() ? sign(judged, reading) : "";
        row.put("box", reading.box());
        row.put("value", (sign + reading.value() + " " + TestWords.unit(reading.unit())).strip())
                .put("serial", reading.instrument())
                .put("who", reading.by())
                .put("on", reading.on());
        if (judged.retested()) {
            row.put("verdict", words.say(counts(judged, reading) ? "report.counts" : "report.earlier"));
        }
    }

    private static String sign(JudgedRow judged, Reading reading) {
        return judged.row().boxes().stream()
                .filter(box -> box.key().equals(reading.box()))
                .map(Box::quantity)
                .map(quantity -> quantity.sign() + " = ")
                .findFirst()
                .orElse("");
    }

    /** The last reading of a box decides. */
    private static boolean counts(JudgedRow judged, Reading reading) {
        List<Reading> own = judged.readings().stream()
                .filter(each -> each.box().equals(reading.box()))
                .toList();
        return own.get(own.size() - 1).equals(reading);
    }
}

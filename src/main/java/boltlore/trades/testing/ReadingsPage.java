package boltlore.trades.testing;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Every test with its readings, in the order of the test sheet; a reading that was replaced stays and says so. */
final class ReadingsPage {

    /**
     * A test, one of its readings, or both in one line.
     *
     * @param number of the test, or null in a line of a reading alone
     */
    private record Line(
            @Nullable Integer number,
            JudgedRow judged,
            @Nullable Reading reading) {}

    private final TestWords words;
    private final VerdictWords says;
    private final List<Line> lines = new ArrayList<>();

    private ReadingsPage(TestWords words) {
        this.words = words;
        this.says = new VerdictWords(words);
    }

    static PageBuilder compose(Verdict verdict, TestWords words) {
        ReadingsPage page = new ReadingsPage(words);
        List<JudgedRow> rows = verdict.rows();
        for (int i = 0; i < rows.size(); i++) {
            page.lines(i + 1, rows.get(i));
        }
        return Page.named(words.say("report.rows"))
                .title(words.say("report.rows"))
                .add(page.spec().of(page.lines));
    }

    private void lines(int number, JudgedRow judged) {
        List<Reading> readings = judged.readings();
        boolean together = readings.size() == 1;
        lines.add(new Line(number, judged, together ? readings.get(0) : null));
        if (!together) {
            readings.forEach(each -> lines.add(new Line(null, judged, each)));
        }
    }

    private TableSpec<Line> spec() {
        return TableSpec.<Line>named("readings")
                .whole("no", words.say("no"), "", Line::number)
                .text("tested", words.say("tested"), 46, line -> ofTest(line, judged -> says.tested(judged.row())))
                .text("limit", words.say("limit"), 24, line -> ofTest(line, judged -> words.limit(judged.row())))
                .text("value", words.say("reading"), this::value)
                .text("result", words.say("report.result"), line -> ofTest(line, says::found))
                .text("verdict", words.say("report.verdict"), this::verdict)
                .text("box", words.say("box"), 24, line -> {
                    String box = ofReading(line, Reading::box);
                    return box == null ? line.judged().row().key() : box;
                })
                .text("serial", words.say("serial"), line -> ofReading(line, Reading::instrument))
                .text("who", words.say("report.who"), line -> ofReading(line, Reading::by))
                .text("on", words.say("report.on"), line -> ofReading(line, Reading::on));
    }

    private static @Nullable String ofTest(Line line, Function<JudgedRow, String> said) {
        return line.number() == null ? null : said.apply(line.judged());
    }

    private static @Nullable String ofReading(Line line, Function<Reading, String> said) {
        return line.reading() == null ? null : said.apply(line.reading());
    }

    private @Nullable String value(Line line) {
        return ofReading(line, reading -> {
            String sign = line.judged().row().workedOut() ? sign(line.judged(), reading) : "";
            return (sign + reading.value() + " " + TestWords.unit(reading.unit())).strip();
        });
    }

    private @Nullable String verdict(Line line) {
        return line.reading() != null && line.judged().retested()
                ? words.say(counts(line.judged(), line.reading()) ? "report.counts" : "report.earlier")
                : ofTest(line, judged -> says.verdict(judged.judgement()));
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

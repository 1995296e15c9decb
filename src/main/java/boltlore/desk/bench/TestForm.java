package boltlore.desk.bench;

import boltlore.catalogue.FoundState;
import boltlore.catalogue.Instrument;
import boltlore.catalogue.Scale;
import boltlore.desk.frame.Call;
import boltlore.measure.Digits;
import boltlore.trades.testing.Box;
import boltlore.trades.testing.JudgedRow;
import boltlore.trades.testing.Judgement;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestRow;
import boltlore.trades.testing.Verdict;
import boltlore.trades.testing.VerdictWords;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The test of a kit as a form, with what is known of each test by now. */
public final class TestForm {

    private TestForm() {}

    /** The tests of one group. */
    public record Group(String says, String before, List<Row> rows) {}

    /**
     * A test.
     *
     * @param judged what it has come to by now
     * @param replaced values that were replaced by later ones
     */
    public record Row(
            String key,
            String tested,
            String limit,
            String meter,
            List<Field> fields,
            String judged,
            String replaced) {}

    /**
     * A box to write into.
     *
     * @param says what goes in, where it is not the result itself
     * @param states words that may stand in it; none where a number does
     * @param known value that was kept last
     * @param typed what stands in the field
     */
    public record Field(String box, String says, String unit, List<String> states, String known, String typed) {}

    /**
     * An instrument that some tests are read with.
     *
     * @param number that stands in the field
     */
    public record Meter(String name, String says, String number) {}

    /** @param known what was kept, which what is typed would replace */
    static List<Group> groups(TestPlan plan, Verdict verdict, List<Reading> known, Call call) {
        return plan.groups().stream()
                .map(group -> new Group(
                        group.group().says().english(),
                        group.group().before().english(),
                        group.rows().stream()
                                .map(row -> row(row, judged(verdict, row), known, call))
                                .toList()))
                .toList();
    }

    private static JudgedRow judged(Verdict verdict, TestRow row) {
        return verdict.rows().stream()
                .filter(each -> each.row().equals(row))
                .findFirst()
                .orElseThrow();
    }

    private static Row row(TestRow row, JudgedRow judged, List<Reading> known, Call call) {
        VerdictWords words = VerdictWords.in("en");
        return new Row(
                row.key(),
                words.tested(row),
                words.limit(row),
                row.instrument().name(),
                row.boxes().stream().map(box -> field(box, known, words, call)).toList(),
                judged.judgement() instanceof Judgement.Missing
                                && judged.readings().isEmpty()
                        ? ""
                        : says(judged, words),
                judged.retested() ? replaced(judged) : "");
    }

    private static Field field(Box box, List<Reading> known, VerdictWords words, Call call) {
        List<String> boxes = call.all("box");
        List<String> values = call.all("value");
        int at = boxes.indexOf(box.key());
        return new Field(
                box.key(),
                words.quantity(box),
                box.unit().replace("ohm", "Ω").replace("degC", "°C"),
                box.scale() == null
                        ? Arrays.stream(FoundState.values())
                                .map(FoundState::written)
                                .toList()
                        : List.of(),
                last(known, box).map(Reading::value).orElse(""),
                at < 0 || at >= values.size() ? "" : values.get(at));
    }

    private static Optional<Reading> last(List<Reading> known, Box box) {
        return known.stream().filter(reading -> reading.box().equals(box.key())).reduce((earlier, later) -> later);
    }

    /** Every reading but the one that counts of each box, as '0.4 (Kim Aster, 2026-11-30)'. */
    private static String replaced(JudgedRow judged) {
        List<Reading> readings = judged.readings();
        List<String> boxes = readings.stream().map(Reading::box).toList();
        return IntStream.range(0, readings.size())
                .filter(at -> boxes.lastIndexOf(boxes.get(at)) > at)
                .mapToObj(readings::get)
                .map(reading -> reading.value() + " (" + reading.by() + ", " + reading.on() + ")")
                .collect(Collectors.joining("; "));
    }

    /** 'passed', 'NOT passed: below the limit by 3 kΩ'. */
    static String says(JudgedRow judged, VerdictWords words) {
        String verdict = words.verdict(judged.judgement());
        String why = words.why(judged);
        return judged.judgement().passed() ? verdict : "NOT passed: " + verdict + (why.isEmpty() ? "" : ", " + why);
    }

    /** Those that this kit is tested with; the number of each as it was typed, or as it was used last. */
    static List<Meter> instruments(TestPlan plan, List<Reading> known, Call call) {
        return plan.rows()
                .map(TestRow::instrument)
                .distinct()
                .map(instrument -> meter(instrument, plan, known, call))
                .toList();
    }

    private static Meter meter(Instrument instrument, TestPlan plan, List<Reading> known, Call call) {
        List<String> boxes = plan.rows()
                .filter(row -> row.instrument().equals(instrument))
                .flatMap(row -> row.boxes().stream())
                .map(Box::key)
                .toList();
        String used = known.stream()
                .filter(reading -> boxes.contains(reading.box()))
                .map(Reading::instrument)
                .reduce((earlier, later) -> later)
                .orElse(instrument.scale() == null ? "by eye" : "");
        String typed = call.said("instrument-" + instrument.name());
        Scale scale = instrument.scale();
        return new Meter(
                instrument.name(),
                instrument.says().english()
                        + (scale == null
                                ? ""
                                : ", " + Digits.plain(scale.from()) + " to " + Digits.plain(scale.to()) + " "
                                        + scale.unit().replace("ohm", "Ω").replace("degC", "°C")),
                typed.isEmpty() ? used : typed);
    }
}

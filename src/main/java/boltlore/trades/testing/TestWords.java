package boltlore.trades.testing;

import boltlore.catalogue.FoundState;
import boltlore.catalogue.Scale;
import boltlore.catalogue.TestGroup;
import boltlore.measure.Wording;
import boltlore.report.Phrases;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The words of the test papers in one language. */
final class TestWords {

    private static final List<String> LANGUAGES = List.of("en", "de", "fr");

    private final String language;
    private final Phrases phrases;

    private TestWords(String language) {
        this.language = language;
        this.phrases = Phrases.of(TestWords.class, "test-sheet", language);
    }

    static TestWords in(String language) {
        return new TestWords(language);
    }

    /** The same in every language that the papers are written in. */
    static Wording each(Function<TestWords, String> says) {
        return new Wording(LANGUAGES.stream().collect(Collectors.toMap(Function.identity(), of -> says.apply(in(of)))));
    }

    String language() {
        return language;
    }

    String say(String name, String... arguments) {
        return phrases.say(name, arguments);
    }

    /** 'at least 198 kΩ', 'open'. */
    String limit(TestRow row) {
        Limit limit = row.limit();
        if (limit instanceof Limit.AtLeast atLeast) {
            return say("limit.atLeast", number(atLeast.least(), row.unit()));
        } else if (limit instanceof Limit.AtMost atMost) {
            return say("limit.atMost", number(atMost.most(), row.unit()));
        } else if (limit instanceof Limit.Below below) {
            return say("limit.below", number(below.bound(), row.unit()));
        } else if (limit instanceof Limit.Between between) {
            return say("limit.between", phrases.number(between.least()), number(between.most(), row.unit()));
        } else if (limit instanceof Limit.InState inState) {
            return inState.state().says().in(language);
        }
        return say("limit.unknown", notKnown(((Limit.Unknown) limit).what()));
    }

    /** The limit, and how it comes about where it is worked out for this kit. */
    String limitWithBasis(TestRow row) {
        return row.basis().isEmpty() ? limit(row) : limit(row) + " (" + basis(row) + ")";
    }

    /** How the limit comes about: '500 Ω/V × 403,2 V'. */
    String basis(TestRow row) {
        return phrases.figures(unit(row.basis()));
    }

    String notKnown(NotKnown what) {
        return say("unknown." + what.name().toLowerCase(Locale.ROOT));
    }

    /** The place in words: position, and which piece of several. */
    String where(TestRow row) {
        return row.at() == null ? say("whole") : where(row.at());
    }

    String where(TestedAt at) {
        String position = at.position().says().in(language);
        return at.pieces() == 1
                ? position
                : say("piece", position, Integer.toString(at.piece()), Integer.toString(at.pieces()));
    }

    /** What was tested, and where. */
    String tested(TestRow row) {
        return row.test().says().in(language) + ", " + where(row);
    }

    /** The place with the part that stands there: 'Junction box (HV-JB1)'. */
    String place(@Nullable TestedAt at) {
        return at == null ? say("whole") : where(at) + " (" + at.part().number() + ")";
    }

    /** What goes into the box, where it is not the result itself. */
    String quantity(Box box) {
        return box.quantity() == Box.Quantity.RESULT
                ? ""
                : say("quantity." + box.quantity().key());
    }

    /** What the high-voltage circuit is like while a group is tested; empty where nobody says. */
    String circuit(TestGroup group) {
        return group.circuit() == null ? "" : say("during." + group.circuit().written());
    }

    /** All that may be found where no number is read. */
    String states() {
        return Arrays.stream(FoundState.values())
                .map(state -> state.says().in(language))
                .collect(Collectors.joining(", "));
    }

    String range(Scale scale) {
        return say("limit.between", phrases.number(scale.from()), number(scale.to(), scale.unit()));
    }

    String number(BigDecimal number, String unit) {
        return phrases.number(number) + " " + unit(unit);
    }

    /** As people write it: records keep letters that every keyboard has. */
    static String unit(String unit) {
        return unit.replace("ohm", "Ω").replace("degC", "°C");
    }
}

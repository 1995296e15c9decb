package boltlore.trades.testing.sheets;

import boltlore.catalogue.FoundState;
import boltlore.catalogue.Scale;
import boltlore.report.Phrases;
import boltlore.trades.testing.Box;
import boltlore.trades.testing.Limit;
import boltlore.trades.testing.NotKnown;
import boltlore.trades.testing.TestRow;
import boltlore.trades.testing.TestedAt;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** The words of the test papers in one language. */
public final class TestWords {

    private final String language;
    private final Phrases phrases;

    private TestWords(String language) {
        this.language = language;
        this.phrases = Phrases.of(TestWords.class, "test-sheet", language);
    }

    public static TestWords in(String language) {
        return new TestWords(language);
    }

    String language() {
        return language;
    }

    String say(String name, String... arguments) {
        return phrases.say(name, arguments);
    }

    /** 'at least 198 kΩ', 'open'. */
    public String limit(TestRow row) {
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
    public String where(TestRow row) {
        return row.at() == null ? say("whole") : where(row.at());
    }

    String where(TestedAt at) {
        String position = at.position().says().in(language);
        return at.pieces() == 1
                ? position
                : say("piece", position, Integer.toString(at.piece()), Integer.toString(at.pieces()));
    }

    /** What goes into the box, where it is not the result itself. */
    String quantity(Box box) {
        return box.quantity() == Box.Quantity.RESULT
                ? ""
                : say("quantity." + box.quantity().key());
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

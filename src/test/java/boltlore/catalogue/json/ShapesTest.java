package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.json.TextShape;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("A shape's pattern, which stands in the schemas, and what the program checks are the same")
class ShapesTest {

    private static final List<TextShape> SHAPES = List.of(
            TextShape.NAME,
            TextShape.PART_NUMBER,
            TextShape.WORDS,
            TextShape.ORDER_NAME,
            TextShape.LINE,
            TextShape.LANGUAGE,
            TextShape.CURRENCY,
            Shapes.AISLE,
            Shapes.BIN,
            Shapes.COUNTRY,
            Shapes.HS_CODE,
            Shapes.HS_BEGINNING,
            TextShape.UN_NUMBER);

    /** Short texts of few letters, and sound ones with something cut out, doubled or put in. */
    @Property(tries = 2_000)
    void for_texts_drawn_by_chance(@ForAll("texts") String text) {
        for (TextShape shape : SHAPES) {
            boolean byPattern = text.length() <= shape.longest() && text.matches(shape.pattern());
            assertThat(shape.fits().test(text))
                    .as("'%s' as %s", text, shape.says())
                    .isEqualTo(byPattern);
        }
    }

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> few =
                Arbitraries.strings().withChars("aZ09.-/_ \\n\tCOMNULCRT1é").ofMaxLength(12);
        Arbitrary<String> sound = Arbitraries.of(
                "drive-unit",
                "PV-CR-E/2",
                "low voltage",
                "BL-1001",
                "A. Customer",
                "de",
                "EUR",
                "C-01-02-A-03",
                "IE",
                "8708.99",
                "85",
                "UN 3480",
                "CON",
                "nul.x",
                "com1",
                "COM12",
                "x".repeat(60),
                "X".repeat(40),
                "y".repeat(100));
        Arbitrary<Integer> at = Arbitraries.integers().between(0, 99);
        Arbitrary<String> changed = Combinators.combine(sound, few, at, at).as((text, piece, from, to) -> {
            int begin = Math.min(from, text.length());
            int end = Math.min(text.length(), begin + to % 3);
            return text.substring(0, begin) + (to % 2 == 0 ? piece : "") + text.substring(end);
        });
        return Arbitraries.oneOf(few, sound, changed);
    }
}

package boltlore.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Letters are those of Liberation Sans, as the Apache PDFBox package carries it")
class TypefaceTest {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** First and last of each run of characters that drawings may need. */
    private static final int[][] RUNS = {
        {' ', '~'}, // Basic Latin
        {0xA0, 0x17F}, // Latin-1 and Latin Extended-A: the languages of Europe
        {0x218, 0x21B}, // Romanian
        {0x37E, 0x3CE}, // Greek
        {0x400, 0x45F}, // Cyrillic
        {0x490, 0x491}, // Ukrainian
        {0x1E9E, 0x1E9E}, // capital sharp s
        {0x2010, 0x2044}, // dashes, quotation marks
        {0x2070, 0x208E}, // figures above and below the line
        {0x20AC, 0x20AC}, // euro
        {0x2103, 0x2126}, // degrees, ohm and other signs like letters
        {0x2190, 0x2195}, // arrows
        {0x2200, 0x2265}, // mathematics
    };

    private static TrueTypeFont font;

    @BeforeAll
    static void font() throws IOException {
        try (InputStream in = resource(FONT)) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        }
    }

    @AfterAll
    static void closed() throws IOException {
        font.close();
    }

    @Test
    @DisplayName("The file of letters is what the font gives; a new one is left under target")
    void generated() throws IOException {
        String made = line(Typeface.MISSING, 0)
                + Stream.of(RUNS)
                        .flatMapToInt(run -> IntStream.rangeClosed(run[0], run[1]))
                        .filter(c -> glyph(c) != 0)
                        .mapToObj(c -> line(c, glyph(c)))
                        .reduce("", String::concat);
        Files.writeString(Path.of("target/letters.received.txt"), made);
        assertThat(text("letters.txt").equals(made))
                .as("letters.txt is target/letters.received.txt")
                .isTrue();
    }

    @Test
    @DisplayName("They are handed on under the licence that they came with")
    void licence() throws IOException {
        URL beside =
                new URL(String.valueOf(TypefaceTest.class.getResource(FONT)).replace(FONT, "/META-INF/LICENSE"));
        try (InputStream in = beside.openStream()) {
            assertThat(text("letters.licence.txt")).contains("Red Hat", "SIL OPEN FONT LICENSE Version 1.1");
            assertThat(squeezed(new String(in.readAllBytes(), StandardCharsets.UTF_8)))
                    .contains(squeezed(text("letters.licence.txt")));
        }
    }

    @Test
    void sizes_are_those_of_the_font() throws IOException {
        assertThat(Typeface.TYPE_SIZE).isEqualTo(font.getUnitsPerEm());
        assertThat(Typeface.CAPITALS)
                .isEqualTo(font.getGlyph()
                        .getGlyph(glyph('H'))
                        .getPath()
                        .getBounds2D()
                        .getHeight());
    }

    /** Advance widths of Helvetica in Adobe's font metrics (AFM), in thousandths of the type size; from memory. */
    @ParameterizedTest
    @CsvSource({"0, 556", "W, 944", "i, 222", "ü, 556", "kg, 1056", "AV, 1334"})
    void words_run_as_wide_as_in_the_published_metrics(String words, int thousandths) {
        double width = Typeface.width(words) * Typeface.CAPITALS / Typeface.TYPE_SIZE;
        assertThat(width).isCloseTo(thousandths / 1000.0, Offset.offset(0.001));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
                "abcdefghijklmnopqrstuvwxyz",
                "0123456789.,:;!?()[]+-–=/%&'\"",
                "ÄÖÜäöüßẞÉÈÊÇéèêçñÅåØøŁłŐőŠšŽžĞğȘțÆæŒœ",
                "µΩΑΒαβ°²³×÷±≤≥≠≈∞−½€§→…",
                "БГДЖбгджЇїҐґ"
            })
    void each_letter_has_an_outline_of_its_own(String letters) {
        List<String> outlines = letters.codePoints()
                .mapToObj(Character::toString)
                .map(TypefaceTest::outline)
                .toList();
        assertThat(outlines).doesNotHaveDuplicates().doesNotContain(outline("\uFFFD"), "");
    }

    @Test
    void an_accent_that_comes_apart_from_its_letter_is_drawn_with_it() {
        assertThat(outline("u\u0308")).isEqualTo(outline("ü")).isNotEqualTo(outline("u"));
    }

    @Test
    void a_stranger_is_an_empty_box() {
        assertThat(outline("\u4E2D")).isEqualTo(outline("\u2603")).isEqualTo(outline("\uFFFD"));
        assertThat(Typeface.width("\u4E2D")).isPositive();
    }

    @Test
    void capitals_are_as_high_as_asked_and_stand_on_the_foot_of_the_line() {
        Rectangle2D bounds = lettering("H", 7).getBounds2D();
        assertThat(bounds.getMinY()).isCloseTo(-3.5, Offset.offset(1e-9));
        assertThat(bounds.getMaxY()).isCloseTo(3.5, Offset.offset(1e-9));
        assertThat(lettering("g", 7).getBounds2D().getMaxY()).isBetween(5.0, 3.5 + 0.31 * 7);
    }

    private static java.awt.geom.Path2D lettering(String text, double heightMm) {
        return Typeface.outline(new Mark.Lettering(new Point(0, 0), text, heightMm, false));
    }

    private static String outline(String letter) {
        return path(lettering(letter, Typeface.CAPITALS).getPathIterator(null));
    }

    private static int glyph(int character) {
        try {
            CmapLookup characters = font.getUnicodeCmapLookup();
            return characters.getGlyphId(character);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String line(int character, int glyph) {
        try {
            GlyphData data = font.getGlyph().getGlyph(glyph);
            return Character.toString(character) + " " + font.getAdvanceWidth(glyph)
                    + (data == null ? "" : path(data.getPath().getPathIterator(null))) + "\n";
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String path(PathIterator steps) {
        StringBuilder path = new StringBuilder();
        double[] points = new double[6];
        for (; !steps.isDone(); steps.next()) {
            int step = steps.currentSegment(points);
            path.append(' ').append("MLQCZ".charAt(step));
            for (int i = 0; i < new int[] {2, 2, 4, 6, 0}[step]; i++) {
                path.append(' ').append(Math.round(points[i]));
            }
        }
        return path.toString();
    }

    private static String text(String file) throws IOException {
        try (InputStream in = resource(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static InputStream resource(String name) {
        InputStream in = TypefaceTest.class.getResourceAsStream(name);
        assertThat(in).as(name).isNotNull();
        return in;
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", " ").trim();
    }
}

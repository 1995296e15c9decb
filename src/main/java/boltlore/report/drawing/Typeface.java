package boltlore.report.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.StringTokenizer;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Widths and outlines of the letters of Liberation Sans 2.1, which runs as wide as Arial: Latin, Greek and Cyrillic with
 * their accents, figures, units and signs of mathematics. They lie beside this class, under their licence, so that no font
 * of the machine is asked. What is not among them is drawn as the font's own empty box.
 */
final class Typeface {

    /** Height of capitals in the units of the outlines. */
    static final double CAPITALS = 1409;

    /** Type size in the same units. */
    static final double TYPE_SIZE = 2048;

    static final int MISSING = 0xFFFD;

    private static final Typeface ALL = new Typeface();

    private final Map<Integer, String> lines = new HashMap<>();
    private final Map<Integer, Letter> drawn = new ConcurrentHashMap<>();

    private Typeface() {
        try (InputStream in = Objects.requireNonNull(Typeface.class.getResourceAsStream("letters.txt"), "letters")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .forEach(line -> lines.put(line.codePointAt(0), line));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Width of the words as a multiple of the height of their capitals. */
    static double width(String text) {
        return composed(text)
                        .codePoints()
                        .mapToDouble(c -> ALL.letter(c).advance())
                        .sum()
                / CAPITALS;
    }

    /** The outlines of the lettering at its place, in mm. */
    static Path2D outline(Mark.Lettering lettering) {
        Path2D words = new Path2D.Double();
        double mm = lettering.heightMm() / CAPITALS;
        AffineTransform place = AffineTransform.getTranslateInstance(lettering.leftMm(), lettering.footMm());
        place.scale(mm, -mm);
        composed(lettering.text()).codePoints().mapToObj(ALL::letter).forEach(letter -> {
            words.append(letter.outline().getPathIterator(place), false);
            place.translate(letter.advance(), 0);
        });
        return words;
    }

    /** With each accent in one character with its letter, wherever there is one. */
    private static String composed(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    private Letter letter(int character) {
        return drawn.computeIfAbsent(
                lines.containsKey(character) ? character : MISSING, c -> Letter.of(lines.getOrDefault(c, "")));
    }

    /** In the units of the font, upwards from the foot. */
    private record Letter(double advance, Path2D outline) {

        /** @param line the character, its advance, then path data as in SVG, each word and number after a blank */
        static Letter of(String line) {
            StringTokenizer words = new StringTokenizer(line.substring(Character.charCount(line.codePointAt(0))));
            double advance = number(words);
            Path2D outline = new Path2D.Double();
            while (words.hasMoreTokens()) {
                switch (words.nextToken()) {
                    case "M" -> outline.moveTo(number(words), number(words));
                    case "L" -> outline.lineTo(number(words), number(words));
                    case "Q" -> outline.quadTo(number(words), number(words), number(words), number(words));
                    default -> outline.closePath();
                }
            }
            return new Letter(advance, outline);
        }

        private static double number(StringTokenizer words) {
            return Integer.parseInt(words.nextToken());
        }
    }
}

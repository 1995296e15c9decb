package boltlore.report.drawing;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Capital letters as strokes of a pen on a grid of 4 by 6, as on a drawing board. Small letters are drawn as capitals,
 * accents left off; what is not known is a box.
 */
final class StrokeFont {

    private static final int HIGH = 6;
    private static final int ADVANCE = 6;
    private static final int WIDE = 4;

    /** Places by two digits: across from the left, up from the foot; strokes parted by a blank. */
    private static final String GLYPHS = """
            A 002640 1333
            B 00063645443303 3342413000
            C 4536160501103041
            D 00063645413000
            E 46060040 0333
            F 460600 0333
            G 45361605011030414323
            H 0006 4046 0343
            I 1030 2026 1636
            J 4641301001
            K 0006 460340
            L 060040
            M 0006234640
            N 00064046
            O 100105163645413010
            P 00063645443303
            Q 100105163645413010 2240
            R 00063645443303 2340
            S 453616050413334241301001
            T 0646 2620
            U 060110304146
            V 062046
            W 0610243046
            X 0046 0640
            Y 062346 2320
            Z 06460040
            0 100105163645413010 1135
            1 152620 1030
            2 05163645440040
            3 0516364544334241301001 3323
            4 30360242
            5 460604344341301001
            6 4536160501103041423303
            7 064610
            8 13040516364544331302011030414233
            9 4313040516364541301001
            - 1333
            – 0343
            . 2021
            , 2110
            / 0046
            × 1034 1430
            ° 1626251516
            ( 36252130
            ) 16252110
            : 2122 2425
            + 2125 0343
            = 0242 0444
            _ 0040
            ' 2526
            % 0046 0506161505 3031414030
            ? 05163645442322 2021
            """;

    private static final String BOX = "0006464000";

    private static final Map<Character, String> STROKES = read();

    private StrokeFont() {}

    private static Map<Character, String> read() {
        Map<Character, String> strokes = new TreeMap<>();
        GLYPHS.lines().forEach(line -> strokes.put(line.charAt(0), line.substring(2)));
        strokes.put(' ', "");
        return strokes;
    }

    /** Width of the words as a multiple of their height. */
    static double width(String text) {
        int letters = capitals(text).length();
        return letters == 0 ? 0 : (double) (letters * ADVANCE - (ADVANCE - WIDE)) / HIGH;
    }

    static String capitals(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toUpperCase(Locale.ROOT);
    }

    /** The strokes of the lettering at its place. */
    static List<Mark.Line> strokes(Mark.Lettering lettering) {
        List<Mark.Line> strokes = new ArrayList<>();
        String text = capitals(lettering.text());
        double unit = lettering.heightMm() / HIGH;
        double foot = lettering.at().yMm() + lettering.heightMm() / 2;
        for (int i = 0; i < text.length(); i++) {
            double left = lettering.leftMm() + i * ADVANCE * unit;
            for (String stroke : STROKES.getOrDefault(text.charAt(i), BOX).split(" ", -1)) {
                strokes.add(new Mark.Line(points(stroke, left, foot, unit), lettering.heightMm() / 9, false));
            }
        }
        return strokes;
    }

    private static List<Point> points(String stroke, double left, double foot, double unit) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < stroke.length(); i += 2) {
            int across = Character.digit(stroke.charAt(i), 10);
            int up = Character.digit(stroke.charAt(i + 1), 10);
            points.add(new Point(left + across * unit, foot - up * unit));
        }
        return points;
    }
}

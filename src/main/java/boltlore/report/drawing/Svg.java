package boltlore.report.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** A drawing as SVG 1.1 (World Wide Web Consortium), in millimetres; lettering stays text that can be searched. */
public final class Svg {

    private static final String FONT = "font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\"";

    /** Height of capitals as a share of the type size, in the usual sans-serif faces. */
    private static final double CAPITALS = 0.72;

    private Svg() {}

    public static String of(Drawing drawing) {
        String width = number(drawing.widthMm());
        String height = number(drawing.heightMm());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\">\n<title>" + escaped(drawing.says())
                + "</title>\n<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"white\"/>\n"
                + drawing.marks().stream().map(Svg::mark).collect(Collectors.joining("\n")) + "\n</svg>\n";
    }

    private static String mark(Mark mark) {
        return mark instanceof Mark.Line line ? line(line) : lettering((Mark.Lettering) mark);
    }

    private static String line(Mark.Line line) {
        String points = line.points().stream()
                .map(point -> number(point.xMm()) + "," + number(point.yMm()))
                .collect(Collectors.joining(" "));
        return "<polyline points=\"" + points + "\" fill=\"none\" stroke=\"black\" stroke-width=\""
                + number(line.penMm()) + "\"" + (line.dashed() ? " stroke-dasharray=\"2 1\"" : "") + "/>";
    }

    private static String lettering(Mark.Lettering lettering) {
        double foot = lettering.at().yMm() + lettering.heightMm() / 2;
        return "<text x=\"" + number(lettering.leftMm()) + "\" y=\"" + number(foot) + "\" " + FONT + " font-size=\""
                + number(lettering.heightMm() / CAPITALS) + "\" textLength=\"" + number(lettering.widthMm())
                + "\" lengthAdjust=\"spacingAndGlyphs\">" + escaped(StrokeFont.capitals(lettering.text())) + "</text>";
    }

    private static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale())).toPlainString();
    }

    /** What XML cannot hold becomes a replacement character. */
    private static String escaped(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cs}\uFFFE\uFFFF]", "\uFFFD")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}

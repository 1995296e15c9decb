package boltlore.report.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** A drawing as SVG 1.1 (World Wide Web Consortium), in millimetres; lettering stays text that can be searched. */
public final class Svg {

    private static final String FONT = "font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\"";

    private Svg() {}

    public static String encode(Drawing drawing) {
        String width = number(drawing.widthMm());
        String height = number(drawing.heightMm());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\" role=\"img\" stroke-linejoin=\"round\">\n<title>"
                + escaped(drawing.says())
                + "</title>\n<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"white\"/>\n"
                + drawing.marks().stream().map(Svg::mark).collect(Collectors.joining("\n")) + "\n</svg>\n";
    }

    private static String mark(Mark mark) {
        if (mark instanceof Mark.Code code) {
            return code(code);
        }
        return mark instanceof Mark.Line line ? line(line) : lettering((Mark.Lettering) mark);
    }

    /** One path, so that no hair of white stands between its squares. */
    private static String code(Mark.Code code) {
        MachineCode.Squares squares = code.squares();
        double side = code.sideMm() / squares.side();
        String path = squares.dark().stream()
                .map(run -> "M" + run.from() + " " + run.row() + "h" + run.count() + "v1h-" + run.count() + "z")
                .collect(Collectors.joining());
        return "<path transform=\"translate(" + number(code.at().xMm()) + " "
                + number(code.at().yMm()) + ") scale(" + exact(side) + ")\" d=\"" + path
                + "\" fill=\"black\" shape-rendering=\"crispEdges\"/>";
    }

    private static String exact(double value) {
        return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).toPlainString();
    }

    private static String line(Mark.Line line) {
        String points = line.openPoints()
                .map(point -> number(point.xMm()) + "," + number(point.yMm()))
                .collect(Collectors.joining(" "));
        return (line.isClosed() ? "<polygon" : "<polyline") + " points=\"" + points
                + "\" fill=\"none\" stroke=\"black\" stroke-width=\"" + number(line.penMm()) + "\""
                + (line.dashed() ? " stroke-dasharray=\"2 1\"" : "") + "/>";
    }

    private static String lettering(Mark.Lettering lettering) {
        return "<text x=\"" + number(lettering.leftMm()) + "\" y=\"" + number(lettering.footMm()) + "\" " + FONT
                + " font-size=\""
                + number(lettering.heightMm() * Typeface.TYPE_SIZE / Typeface.CAPITALS) + "\" textLength=\""
                + number(lettering.widthMm())
                + "\" lengthAdjust=\"spacingAndGlyphs\">" + escaped(lettering.text()) + "</text>";
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

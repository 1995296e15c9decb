package boltlore.report.xlsx;

import boltlore.report.BarChart;
import boltlore.report.Cell;
import boltlore.report.Kind;
import boltlore.report.Printed;
import boltlore.report.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A chart part (ECMA-376 part 1, 21.2): grey bars from left to right that read from the cells of the page. */
final class ChartXml {

    private static final String DARK_GREY = "595959";
    private static final int TITLE_POINTS = 10;
    private static final int TEXT_POINTS = 8;

    private final BarChart chart;
    private final LaidTable table;
    private final String sheet;

    ChartXml(BarChart chart, LaidTable table, String sheet) {
        this.chart = chart;
        this.table = table;
        this.sheet = sheet;
    }

    String xml() {
        return Xml.HEAD + "<c:chartSpace xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\""
                + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\""
                + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
                + "<c:roundedCorners val=\"0\"/><c:chart>" + title(chart.title(), TITLE_POINTS, true)
                + "<c:autoTitleDeleted val=\"0\"/><c:plotArea><c:layout/>" + bars() + labelAxis() + valueAxis()
                + "</c:plotArea><c:plotVisOnly val=\"1\"/><c:dispBlanksAs val=\"gap\"/></c:chart>"
                + "<c:spPr><a:solidFill><a:srgbClr val=\"FFFFFF\"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr>"
                + "<c:txPr><a:bodyPr/><a:p><a:pPr>" + type(TEXT_POINTS, false)
                + "</a:pPr><a:endParaRPr lang=\"en-GB\"/></a:p></c:txPr></c:chartSpace>";
    }

    private String bars() {
        return "<c:barChart><c:barDir val=\"bar\"/><c:grouping val=\"clustered\"/><c:varyColors val=\"0\"/>"
                + "<c:ser><c:idx val=\"0\"/><c:order val=\"0\"/><c:spPr><a:solidFill><a:srgbClr val=\"" + DARK_GREY
                + "\"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr><c:invertIfNegative val=\"0\"/>"
                + "<c:cat><c:strRef><c:f>" + range(chart.labels()) + "</c:f><c:strCache>"
                + points(cell -> Printed.inColumn(kind(chart.labels()), cell), chart.labels())
                + "</c:strCache></c:strRef></c:cat><c:val><c:numRef><c:f>" + range(chart.values())
                + "</c:f><c:numCache><c:formatCode>General</c:formatCode>"
                + points(cell -> number(cell).toPlainString(), chart.values())
                + "</c:numCache></c:numRef></c:val></c:ser>"
                + "<c:gapWidth val=\"60\"/><c:axId val=\"1\"/><c:axId val=\"2\"/></c:barChart>";
    }

    /** The first row's bar on top, which to this axis is its end. */
    private static String labelAxis() {
        return "<c:catAx><c:axId val=\"1\"/><c:scaling><c:orientation val=\"maxMin\"/></c:scaling>"
                + "<c:delete val=\"0\"/><c:axPos val=\"l\"/><c:numFmt formatCode=\"General\" sourceLinked=\"0\"/>"
                + "<c:majorTickMark val=\"none\"/><c:minorTickMark val=\"none\"/><c:tickLblPos val=\"low\"/>" + line()
                + "<c:crossAx val=\"2\"/><c:crosses val=\"autoZero\"/><c:auto val=\"0\"/><c:lblAlgn val=\"ctr\"/>"
                + "<c:lblOffset val=\"100\"/><c:noMultiLvlLbl val=\"1\"/></c:catAx>";
    }

    private String valueAxis() {
        return "<c:valAx><c:axId val=\"2\"/><c:scaling><c:orientation val=\"minMax\"/></c:scaling>"
                + "<c:delete val=\"0\"/><c:axPos val=\"b\"/>" + title(chart.axis(), TEXT_POINTS, false)
                + "<c:numFmt formatCode=\"#,##0\" sourceLinked=\"0\"/><c:majorTickMark val=\"out\"/>"
                + "<c:minorTickMark val=\"none\"/><c:tickLblPos val=\"nextTo\"/>" + line() + upright()
                + "<c:crossAx val=\"1\"/><c:crosses val=\"max\"/><c:crossBetween val=\"between\"/><c:majorUnit val=\""
                + step() + "\"/></c:valAx>";
    }

    /** 1, 2 or 5 times a power of ten, so that the longest bar spans three to seven of them. */
    private String step() {
        int at = table.table().column(chart.values());
        BigDecimal longest = table.table().rows().stream()
                .filter(Row::isPlain)
                .map(row -> number(row.cells().get(at)).abs())
                .reduce(BigDecimal.ZERO, BigDecimal::max);
        if (longest.signum() == 0) {
            return "1";
        }
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(longest.precision() - longest.scale() - 1);
        int first = longest.divide(power, 1, RoundingMode.DOWN).intValue();
        BigDecimal step = power.multiply(first < 2 ? new BigDecimal("0.5") : new BigDecimal(first < 5 ? 1 : 2));
        return step.toPlainString();
    }

    private static String upright() {
        return "<c:txPr><a:bodyPr rot=\"0\" vert=\"horz\"/><a:p><a:pPr>" + type(TEXT_POINTS, false)
                + "</a:pPr><a:endParaRPr lang=\"en-GB\"/></a:p></c:txPr>";
    }

    private static String line() {
        return "<c:spPr><a:ln w=\"9525\"><a:solidFill><a:srgbClr val=\"000000\"/></a:solidFill></a:ln></c:spPr>";
    }

    private static String title(String text, int points, boolean bold) {
        return "<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr>" + type(points, bold) + "</a:pPr><a:r>"
                + type(points, bold).replace("defRPr", "rPr") + "<a:t>" + Xml.escaped(text)
                + "</a:t></a:r></a:p></c:rich></c:tx><c:overlay val=\"0\"/></c:title>";
    }

    private static String type(int points, boolean bold) {
        return "<a:defRPr sz=\"" + points * 100 + "\" b=\"" + (bold ? 1 : 0)
                + "\"><a:solidFill><a:srgbClr val=\"000000\"/></a:solidFill><a:latin typeface=\"" + Dress.TYPEFACE
                + "\"/></a:defRPr>";
    }

    private Kind kind(String column) {
        return table.table().columns().get(table.table().column(column)).kind();
    }

    private String points(Function<Cell, String> text, String column) {
        int at = table.table().column(column);
        List<Cell> cells = table.table().rows().stream()
                .filter(Row::isPlain)
                .map(row -> row.cells().get(at))
                .toList();
        StringBuilder points = new StringBuilder("<c:ptCount val=\"" + cells.size() + "\"/>");
        for (int i = 0; i < cells.size(); i++) {
            points.append("<c:pt idx=\"").append(i).append("\"><c:v>");
            points.append(Xml.escaped(text.apply(cells.get(i)))).append("</c:v></c:pt>");
        }
        return points.toString();
    }

    private static BigDecimal number(Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return figure.value();
        }
        return cell instanceof Cell.Worked worked ? worked.result() : BigDecimal.ZERO;
    }

    /** The plain rows; in brackets where others stand between them. */
    private String range(String column) {
        List<String> runs = new ArrayList<>();
        List<Row> rows = table.table().rows();
        int grid = table.column(column);
        int start = -1;
        for (int i = 0; i <= rows.size(); i++) {
            boolean plain = i < rows.size() && rows.get(i).isPlain();
            if (plain && start < 0) {
                start = i;
            } else if (!plain && start >= 0) {
                String from = Ref.fixed(grid, table.firstRow() + start);
                runs.add(Ref.on(sheet, from + ":" + Ref.fixed(grid, table.firstRow() + i - 1)));
                start = -1;
            }
        }
        String joined = runs.stream().map(Xml::escaped).collect(Collectors.joining(","));
        return runs.size() == 1 ? joined : "(" + joined + ")";
    }
}

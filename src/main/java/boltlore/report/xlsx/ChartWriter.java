package boltlore.report.xlsx;

import boltlore.report.BarChart;
import boltlore.report.Cell;
import boltlore.report.Kind;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.xlsx.LaidPage.LaidChart;
import boltlore.report.xlsx.LaidPage.LaidTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickMark;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFTitle;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xddf.usermodel.text.XDDFTextRun;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Grey bars from left to right that read from the cells of the page. */
final class ChartWriter {

    private static final byte[] DARK_GREY = {0x59, 0x59, 0x59};
    private static final byte[] BLACK = {0, 0, 0};
    private static final byte[] WHITE = {-1, -1, -1};
    private static final double TITLE_POINTS = 10;
    private static final double TEXT_POINTS = 9;

    private final BarChart chart;
    private final LaidTable table;
    private final XSSFSheet sheet;

    private ChartWriter(BarChart chart, LaidTable table, XSSFSheet sheet) {
        this.chart = chart;
        this.table = table;
        this.sheet = sheet;
    }

    static void write(XSSFChart to, LaidChart laid, LaidTable table, XSSFSheet sheet) {
        new ChartWriter(laid.chart(), table, sheet).write(to);
    }

    private void write(XSSFChart to) {
        XDDFShapeProperties area = new XDDFShapeProperties(to.getCTChartSpace().addNewSpPr());
        to.getCTChartSpace().addNewRoundedCorners().setVal(false);
        area.setFillProperties(fill(WHITE));
        area.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
        to.setTitleText(chart.title());
        to.setTitleOverlay(false);
        set(to.getTitle(), TITLE_POINTS, true);
        XDDFCategoryAxis labels = to.createCategoryAxis(AxisPosition.LEFT);
        XDDFValueAxis values = to.createValueAxis(AxisPosition.BOTTOM);
        set(labels);
        set(values);
        // The first row's bar on top, which to this axis is its end.
        labels.setOrientation(AxisOrientation.MAX_MIN);
        labels.setTickLabelPosition(AxisTickLabelPosition.LOW);
        values.setMajorTickMark(AxisTickMark.OUT);
        values.setCrosses(AxisCrosses.MAX);
        values.setNumberFormat("#,##0");
        values.setMajorUnit(step().doubleValue());
        values.setTitle(chart.axis());
        set(new XDDFTitle(to, to.getCTChart().getPlotArea().getValAxArray(0).getTitle()), TEXT_POINTS, false);
        bars(to, labels, values);
        var frame = to.getGraphicFrame();
        frame.setName("Chart " + (frame.getId() + 1));
        frame.getCTGraphicalObjectFrame().getNvGraphicFramePr().getCNvPr().setDescr(chart.title());
    }

    private void bars(XSSFChart to, XDDFCategoryAxis labels, XDDFValueAxis values) {
        Kind kind = table.table()
                .columns()
                .get(table.table().column(chart.labels()))
                .kind();
        String[] words = cells(chart.labels()).stream()
                .map(cell -> Printed.inColumn(kind, cell))
                .toArray(String[]::new);
        BigDecimal[] lengths =
                cells(chart.values()).stream().map(ChartWriter::number).toArray(BigDecimal[]::new);
        XDDFBarChartData bars = (XDDFBarChartData) to.createData(ChartTypes.BAR, labels, values);
        bars.setBarDirection(BarDirection.BAR);
        bars.setVaryColors(false);
        bars.setGapWidth(60);
        XDDFChartData.Series series = bars.addSeries(
                XDDFDataSourcesFactory.fromArray(words, range(chart.labels())),
                XDDFDataSourcesFactory.fromArray(lengths, range(chart.values())));
        series.setTitle(chart.title(), null);
        series.setFillProperties(fill(DARK_GREY));
        to.plot(bars);
    }

    private static void set(XDDFChartAxis axis) {
        axis.setMajorTickMark(AxisTickMark.NONE);
        axis.getOrAddShapeProperties().setLineProperties(new XDDFLineProperties(fill(BLACK)));
        axis.getOrAddTextProperties().setFontSize(TEXT_POINTS);
    }

    /** In one language whatever the machine's: POI would write that down. */
    private static void set(XDDFTitle title, double points, boolean bold) {
        for (XDDFTextRun run : title.getBody().getParagraph(0).getTextRuns()) {
            run.setFontSize(points);
            run.setBold(bold);
            run.setLanguage(Locale.UK);
        }
    }

    private static XDDFSolidFillProperties fill(byte[] rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(rgb));
    }

    /** 1, 2 or 5 times a power of ten, so that the longest bar spans three to seven of them. */
    private BigDecimal step() {
        BigDecimal longest =
                cells(chart.values()).stream().map(cell -> number(cell).abs()).reduce(BigDecimal.ZERO, BigDecimal::max);
        if (longest.signum() == 0) {
            return BigDecimal.ONE;
        }
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(longest.precision() - longest.scale() - 1);
        int first = longest.divide(power, 1, RoundingMode.DOWN).intValue();
        return power.multiply(first < 2 ? new BigDecimal("0.5") : new BigDecimal(first < 5 ? 1 : 2));
    }

    private List<Cell> cells(String column) {
        int at = table.table().column(column);
        return table.table().rows().stream()
                .filter(Row::isPlain)
                .map(row -> row.cells().get(at))
                .toList();
    }

    private static BigDecimal number(Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return figure.value();
        }
        return cell instanceof Cell.Worked worked ? worked.result() : BigDecimal.ZERO;
    }

    /** The plain rows; in brackets where others stand between them. */
    private String range(String column) {
        int at = table.column(column);
        List<String> runs = table.rows(Row::isPlain).stream()
                .map(rows -> new CellRangeAddress(rows.first(), rows.last(), at, at)
                        .formatAsString(sheet.getSheetName(), true))
                .toList();
        return runs.size() == 1 ? runs.get(0) : runs.stream().collect(Collectors.joining(",", "(", ")"));
    }
}

package boltlore.report.xlsx;

import boltlore.report.BarChart;
import boltlore.report.BarCharts;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Particulars;
import boltlore.report.Picture;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.drawing.Drawing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays the blocks of a page one below the other. */
final class PageLayout implements Block.Cases<Void> {

    private static final double DATE_TO_WRITE = 14;
    private static final double NAME_TO_WRITE = 28;

    private final Grid grid;
    private final Needs needs;
    private final double sheet;
    private final List<LaidRow> rows = new ArrayList<>();
    private final Map<String, LaidTable> tables = new LinkedHashMap<>();
    private final Map<String, Map<String, LaidPage.Spot>> particulars = new LinkedHashMap<>();
    private final List<LaidChart> charts = new ArrayList<>();
    private final List<LaidPicture> pictures = new ArrayList<>();

    private PageLayout(Grid grid, Needs needs, boolean landscape) {
        this.grid = grid;
        this.needs = needs;
        this.sheet = GridMaker.sheet(landscape);
    }

    static LaidPage of(Page page) {
        Needs needs = Needs.of(page);
        Grid grid = GridMaker.of(page, needs);
        PageLayout layout = new PageLayout(grid, needs, page.print().landscape());
        page.blocks().forEach(layout::claim);
        for (Block block : page.blocks()) {
            if (!layout.rows.isEmpty()) {
                layout.rows.add(LaidRow.gap(Heights.GAP));
            }
            block.as(layout);
        }
        return new LaidPage(
                page,
                grid,
                layout.rows,
                layout.tables,
                layout.particulars,
                layout.charts,
                layout.pictures,
                needs.main());
    }

    /** Lets the grid grow to what the block needs before anything is laid across it. */
    private void claim(Block block) {
        if (block instanceof Table table) {
            grid.span(needs.of(table));
        } else if (block instanceof Particulars particularsBlock) {
            new ParticularsLayout(grid, particularsBlock);
        } else if (block instanceof Signatures signatures) {
            spans(signatures);
        }
    }

    @Override
    public Void heading(Heading heading) {
        return across(heading.look(), "", heading.text());
    }

    @Override
    public Void note(Note note) {
        return across(note.look(), note.lead(), note.text());
    }

    @Override
    public Void particulars(Particulars block) {
        ParticularsLayout layout = new ParticularsLayout(grid, block);
        particulars.put(block.name(), layout.spots(rows.size()));
        rows.addAll(layout.rows());
        return null;
    }

    @Override
    public Void table(Table table) {
        Spans spans = grid.span(needs.of(table));
        TableLayout layout = new TableLayout(grid, table, spans);
        rows.add(layout.heading());
        tables.put(table.name(), new LaidTable(table, rows.size(), spans));
        table.rows().forEach(row -> rows.add(layout.row(row)));
        return null;
    }

    @Override
    public Void charts(BarCharts block) {
        int first = rows.size();
        int bars = block.charts().stream().mapToInt(this::bars).max().orElse(0);
        int height = Math.max(10, 5 + (int) Math.ceil(bars * 1.4));
        for (int i = 0; i < height; i++) {
            rows.add(LaidRow.gap(Heights.CHART_ROW));
        }
        double each = grid.total() / 2;
        for (int i = 0; i < block.charts().size(); i++) {
            double to = block.charts().size() == 1 ? grid.total() : (i + 1) * each;
            charts.add(new LaidChart(block.charts().get(i), i * each, to, first, rows.size() - 1));
        }
        return null;
    }

    /** At its own size on paper, where a page that is wider than the sheet is shrunk; never wider than the columns. */
    @Override
    public Void picture(Picture picture) {
        Drawing drawing = picture.drawing();
        double natural = drawing.widthMm() * DrawingXml.POINTS_PER_MM;
        double shrunk = Math.max(1, grid.total() / sheet);
        double scale = Math.min(shrunk, grid.total() * DrawingXml.LEAST_PER_CHARACTER / natural);
        double height = drawing.heightMm() * DrawingXml.POINTS_PER_MM * scale;
        pictures.add(new LaidPicture(drawing, rows.size(), natural * scale, height));
        rows.add(LaidRow.gap(Math.min(Heights.TALLEST, height)));
        return null;
    }

    private int bars(BarChart chart) {
        LaidTable table = tables.get(chart.table());
        return table == null
                ? 0
                : (int) table.table().rows().stream()
                        .filter(row -> row.isPlain())
                        .count();
    }

    private Spans spans(Signatures signatures) {
        double longest =
                signatures.lines().stream().mapToDouble(Type::width).max().orElse(0);
        return grid.span(List.of(
                Need.text(longest, longest),
                Need.fixed(NAME_TO_WRITE),
                Need.text(signatures.dateWord().length(), 12),
                Need.fixed(DATE_TO_WRITE)));
    }

    @Override
    public Void signatures(Signatures signatures) {
        Spans spans = spans(signatures);
        for (String line : signatures.lines()) {
            rows.add(new LaidRow(
                    Heights.SIGNATURE,
                    List.of(
                            cell(spans, 0, Look.LABEL, line),
                            cell(spans, 1, Look.SIGNATURE, ""),
                            LaidCell.of(
                                    spans.start(2),
                                    spans.span(2),
                                    Face.of(Look.LABEL).indented(),
                                    Cell.of(signatures.dateWord())),
                            cell(spans, 3, Look.SIGNATURE, ""))));
        }
        return null;
    }

    private static LaidCell cell(Spans spans, int i, Look look, String text) {
        return LaidCell.of(spans.start(i), spans.span(i), Face.of(look), Cell.of(text));
    }

    private Void across(Look look, String lead, String text) {
        String words = lead.isEmpty() ? text : lead + ": " + text;
        double height = Heights.of(look, words, grid.total());
        rows.add(new LaidRow(
                look == Look.NOTE || look == Look.CAUTION ? height + Heights.GAP : height,
                List.of(new LaidCell(0, grid.columns(), Face.of(look), Cell.of(text), lead))));
        return null;
    }
}

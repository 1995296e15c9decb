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
import boltlore.report.Row;
import boltlore.report.Signatures;
import boltlore.report.Table;
import boltlore.report.drawing.Drawing;
import boltlore.report.xlsx.LaidPage.LaidCell;
import boltlore.report.xlsx.LaidPage.LaidChart;
import boltlore.report.xlsx.LaidPage.LaidPicture;
import boltlore.report.xlsx.LaidPage.LaidRow;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Paged;
import boltlore.report.xlsx.LaidPage.Rows;
import boltlore.report.xlsx.LaidPage.Spot;
import boltlore.report.xlsx.LaidPage.Stretch;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Lays the blocks of a page one below the other. */
final class PageLayout implements Block.Cases<Void> {

    /**
     * What a character is wide on paper at the least, in points: a figure of nine points, which some programs round to
     * whole dots of the screen. No picture is wider than its columns print, or the page's edge would cut it.
     */
    static final double POINTS_PER_CHARACTER = 4.93;

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double DATE_TO_WRITE = 14;
    private static final double NAME_TO_WRITE = 28;
    private static final double SIGNATURE_ROW = 30;
    private static final double CHART_ROW = 14;
    /** What a note keeps clear at its left, and what bold words before it take more than others, in characters. */
    private static final double NOTE_INDENT = 3;

    private static final int MOST_TIMES = 6;
    private static final double MUCH_HIGHER = 1.06;

    private final String language;
    private final double sheet;
    private final Grid grid;
    private final boolean legible;
    private final LaidPage laid;
    private final List<LaidRow> rows;
    private final Map<String, List<ColumnWidth>> widths = new HashMap<>();
    private final Measured measured;

    /** What tables are wide, measured once for all the ways in which a page is tried. */
    private record Measured(Map<Table, List<ColumnWidth>> onPaper, Map<Table, List<Double>> beside) {

        Measured() {
            this(new IdentityHashMap<>(), new IdentityHashMap<>());
        }

        List<ColumnWidth> onPaper(Table table, Page page) {
            return onPaper.computeIfAbsent(table, each -> ColumnWidth.of(Divided.whole(each, page)));
        }

        List<Double> beside(Table table) {
            return beside.computeIfAbsent(table, ColumnWidth::beside);
        }
    }

    private PageLayout(Page page, String language, Measured measured, boolean ownColumns, boolean small) {
        this.language = language;
        this.measured = measured;
        String main = "";
        int most = 0;
        for (Table table : page.tables().toList()) {
            widths.put(table.id(), measured.onPaper(table, page));
            int cells = table.isPrinted()
                    ? (table.rows().size() + 1) * table.columns().size()
                    : 0;
            main = cells > most ? table.id() : main;
            most = Math.max(most, cells);
        }
        boolean landscape = page.print().landscape();
        sheet = Grid.sheet(landscape);
        grid = ownColumns
                ? Grid.ofOwnColumns(widths.values(), landscape, small)
                : Grid.of(widths.getOrDefault(main, List.of()), landscape, small);
        legible = settles(page) && grid.isLegible(landscape);
        laid = new LaidPage(page, grid, main);
        rows = laid.rows();
    }

    /**
     * The columns of the table with the most cells suit the page best, unless other blocks grow much higher in them than
     * with columns of their own, or the page would print too small. Type is as small as may be where that saves a sheet
     * of paper.
     */
    static Paged lay(Page written, String language) {
        Page page = Pairs.of(written);
        Measured measured = new Measured();
        Paged full = Paged.of(divided(page, language, measured, false));
        int breaks = full.breaks().after().size();
        if (breaks == 0) {
            return full;
        }
        Paged small = Paged.of(divided(page, language, measured, true));
        return small.breaks().after().size() < breaks ? small : full;
    }

    private static LaidPage divided(Page page, String language, Measured measured, boolean small) {
        LaidPage whole = whole(page, language, measured, small);
        if (page.tables().noneMatch(Divided::splits)) {
            return whole;
        }
        Page split = Divided.where(whole, language);
        return split.equals(page) ? whole : whole(split, language, new Measured(), small);
    }

    private static LaidPage whole(Page page, String language, Measured measured, boolean small) {
        PageLayout shared = new PageLayout(page, language, measured, false, small).lay(page);
        if (shared.legible && page.tables().count() + page.particulars().count() < 2) {
            return shared.laid;
        }
        PageLayout own = new PageLayout(page, language, measured, true, small).lay(page);
        return shared.legible && shared.height() <= own.height() * MUCH_HIGHER ? shared.laid : own.laid;
    }

    private PageLayout lay(Page page) {
        Block last = null;
        for (Block block : page.blocks()) {
            if (!rows.isEmpty() && !(isCaution(last) && isCaution(block))) {
                rows.add(LaidRow.gap(LookStyle.GAP));
            }
            last = block;
            int first = rows.size();
            block.as(this);
            laid.stretches().add(new Stretch(block, first, rows.size() - 1));
        }
        return this;
    }

    /** Cautions stand in one frame. */
    private static boolean isCaution(@Nullable Block block) {
        return block instanceof Note note && note.look() == Look.CAUTION;
    }

    private double height() {
        return rows.stream().mapToDouble(LaidRow::height).sum();
    }

    /** Whether all blocks have what they need and none asks for more when it is asked again. */
    private boolean settles(Page page) {
        for (int time = 0; time < MOST_TIMES; time++) {
            double before = grid.total() + grid.columns();
            page.blocks().forEach(this::claim);
            if (time > 0 && grid.total() + grid.columns() == before) {
                return true;
            }
        }
        return false;
    }

    /** Lets the grid grow to what the block needs before anything is laid across it. */
    private void claim(Block block) {
        if (block instanceof Table table) {
            spans(table);
        } else if (block instanceof Particulars particulars) {
            new ParticularsLayout(grid, particulars);
        } else if (block instanceof Signatures signatures) {
            spans(signatures);
        }
    }

    private Grid.Spans spans(Table table) {
        return grid.beside(grid.span(widths.getOrDefault(table.id(), List.of())), measured.beside(table));
    }

    private Grid.Spans spans(Signatures signatures) {
        double longest = signatures.lines().stream()
                .mapToDouble(FontMetrics::width)
                .max()
                .orElse(0);
        return grid.span(List.of(
                ColumnWidth.text(longest, longest),
                ColumnWidth.fixed(NAME_TO_WRITE),
                ColumnWidth.text(FontMetrics.width(signatures.dateWord()) + 2, 14),
                ColumnWidth.fixed(DATE_TO_WRITE)));
    }

    @Override
    public Void heading(Heading heading) {
        return across(heading.look(), "", heading.text(), 0);
    }

    @Override
    public Void note(Note note) {
        double air = isCaution(note) ? LookStyle.GAP / 2 : LookStyle.GAP;
        return across(note.look(), note.lead(), note.text(), air);
    }

    private Void across(Look look, String lead, String text, double air) {
        String leading = lead.isEmpty() ? "" : lead + Note.colon(language);
        LaidCell cell = new LaidCell(0, grid.columns(), CellStyleKey.of(look), Cell.of(text), leading);
        double room = grid.total() - (cell.style().indented() ? NOTE_INDENT : 0);
        rows.add(new LaidRow(LookStyle.height(look, leading + text, room) + air, "", List.of(cell)));
        return null;
    }

    @Override
    public Void particulars(Particulars block) {
        ParticularsLayout layout = new ParticularsLayout(grid, block);
        laid.particulars().put(block.name(), layout.spots(rows.size()));
        rows.addAll(layout.rows());
        return null;
    }

    @Override
    public Void table(Table table) {
        Grid.Spans spans = spans(table);
        TableLayout layout = new TableLayout(grid, table, spans);
        rows.add(layout.heading());
        laid.tables().put(table.id(), new LaidTable(table, rows.size(), spans));
        for (Row row : table.rows()) {
            layout.codes(row, rows.size(), laid.codes());
            rows.add(layout.row(row));
        }
        return null;
    }

    @Override
    public Void charts(BarCharts block) {
        int first = rows.size();
        int bars = block.charts().stream().mapToInt(this::bars).max().orElse(0);
        int height = Math.max(8, 4 + (int) Math.ceil(bars * 1.1));
        for (int i = 0; i < height; i++) {
            rows.add(LaidRow.gap(CHART_ROW));
        }
        double each = grid.total() / block.charts().size();
        for (int i = 0; i < block.charts().size(); i++) {
            Rows covered = new Rows(first, rows.size() - 1);
            laid.charts().add(new LaidChart(block.charts().get(i), i * each, (i + 1) * each, covered));
        }
        return null;
    }

    private int bars(BarChart chart) {
        LaidTable table = laid.tables().get(chart.table());
        return table == null
                ? 0
                : (int) table.table().rows().stream().filter(Row::isPlain).count();
    }

    /**
     * At its own size on paper, where a page that is wider than the sheet is shrunk; never wider than the columns nor higher
     * than a row may be, or what comes next would cover its foot.
     */
    @Override
    public Void picture(Picture picture) {
        Drawing drawing = picture.drawing();
        double natural = drawing.widthMm() * POINTS_PER_MM;
        double shrunk = Math.max(1, grid.total() / sheet);
        double scale = Math.min(shrunk, grid.total() * POINTS_PER_CHARACTER / natural);
        double high = drawing.heightMm() * POINTS_PER_MM;
        scale = Math.min(scale, (LookStyle.TALLEST - DrawingWriter.CLEAR_OF_BREAK) / high);
        double height = high * scale;
        laid.pictures().add(new LaidPicture(drawing, rows.size(), natural * scale, height));
        rows.add(LaidRow.gap(height));
        return null;
    }

    @Override
    public Void signatures(Signatures signatures) {
        Grid.Spans spans = spans(signatures);
        CellStyleKey label = CellStyleKey.of(Look.LABEL);
        for (String line : signatures.lines()) {
            laid.dates().add(new Spot(spans.start(3), rows.size()));
            List<LaidCell> cells = List.of(
                    cell(spans, 0, label, line),
                    cell(spans, 1, CellStyleKey.of(Look.SIGNATURE), ""),
                    cell(spans, 2, label.indent(), signatures.dateWord()),
                    cell(spans, 3, CellStyleKey.dateToWrite(Look.SIGNATURE), ""));
            rows.add(new LaidRow(SIGNATURE_ROW, "", cells));
        }
        return null;
    }

    private static LaidCell cell(Grid.Spans spans, int i, CellStyleKey style, String text) {
        return new LaidCell(spans.start(i), spans.span(i), style, Cell.of(text));
    }
}

package boltlore.report.text;

import boltlore.measure.Legible;
import boltlore.report.Block;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.SheetFile;
import java.util.ArrayList;
import java.util.List;

/** One file a workbook, without colour or control characters; numbers as people of the page's language write them. */
public final class TextWriter implements ReportWriter {

    /** Columns narrower than this cannot hold a word. */
    public static final int NARROWEST = 40;

    private final int width;

    /** For lines of at most so many characters, or {@link #NARROWEST} where it is more. */
    public TextWriter(int width) {
        this.width = Math.max(NARROWEST, width);
    }

    @Override
    public List<SheetFile> write(Report report) {
        return List.of(SheetFile.utf8(report.file() + ".txt", text(report)));
    }

    /** All pages one below the other. */
    public String text(Report report) {
        List<String> lines = new ArrayList<>();
        report.pages().forEach(page -> page(page, page.languageIn(report), lines));
        return joined(lines);
    }

    /** A single block, for a terminal. */
    public String text(Block block) {
        return joined(block.as(new TextBlocks(width, 1, null, "en")));
    }

    private void page(Page page, String language, List<String> lines) {
        String name = "-- " + page.tab() + " ";
        lines.add(name + "-".repeat(Math.max(0, width - name.length())));
        lines.add("");
        TextBlocks blocks = new TextBlocks(width, Math.max(1, page.print().frozenColumns()), page, language);
        for (Block block : page.blocks()) {
            lines.addAll(block.as(blocks));
            lines.add("");
        }
    }

    private static String joined(List<String> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(Legible.line(line).stripTrailing()).append('\n'));
        return text.toString();
    }
}

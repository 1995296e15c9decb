package boltlore.report.html;

import boltlore.report.Block;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.ReportWriter;
import boltlore.report.SheetFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * One file a report, for a screen and for paper: each page of the report begins a sheet of paper, in its own
 * orientation, and a table that runs on repeats its headings. Drawings are SVG in the text.
 */
public final class HtmlWriter implements ReportWriter {

    private static final String STYLE = style();

    @Override
    public List<SheetFile> write(Report report) {
        return List.of(SheetFile.utf8(report.file() + ".html", text(report)));
    }

    /** The report's title and what it is about, as text. */
    public static String title(Report report) {
        return report.subject().isEmpty()
                ? report.title()
                : report.title() + Note.colon(report.language()) + report.subject();
    }

    /** The report's pages alone, escaped, each a section; to stand in a page of its own under the same style sheet. */
    public static String pages(Report report) {
        return pages(report, page -> true);
    }

    /** One page by itself, which need not be one of the report's. */
    public static String page(Report report, Page page) {
        return page(page, page.languageIn(report), report.language());
    }

    /** Some of its pages, as they stand in the sheet. */
    public static String pages(Report report, Predicate<Page> wanted) {
        return report.pages().stream()
                .filter(wanted)
                .map(page -> page(page, page.languageIn(report), report.language()))
                .collect(Collectors.joining());
    }

    static String text(Report report) {
        String title = HtmlBlocks.escaped(title(report));
        String pages = pages(report);
        return "<!DOCTYPE html>\n<html lang=\"" + HtmlBlocks.escaped(report.language())
                + "\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" + title
                + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n<main>\n" + pages
                + "</main>\n</body>\n</html>\n";
    }

    private static String page(Page page, String language, String reportLanguage) {
        HtmlBlocks blocks = new HtmlBlocks(page, language, false);
        StringBuilder text = new StringBuilder("<section class=\"")
                .append(page.print().landscape() ? "across" : "upright")
                .append("\" aria-label=\"")
                .append(HtmlBlocks.escaped(page.tab()))
                .append(language.equals(reportLanguage) ? "" : "\" lang=\"" + HtmlBlocks.escaped(language))
                .append("\">\n");
        for (Block block : page.blocks()) {
            text.append(block.as(blocks)).append('\n');
        }
        line(text, "footer", page.print().footer());
        return text.append("</section>\n").toString();
    }

    /** Some pages of a report to stand within a page of other things, without the style: that page brings its own. */
    public static String within(Report report, Predicate<Page> wanted) {
        return report.pages().stream()
                .filter(wanted)
                .map(page -> within(page, page.languageIn(report)))
                .collect(Collectors.joining());
    }

    private static String within(Page page, String language) {
        HtmlBlocks blocks = new HtmlBlocks(page, language, true);
        return page.blocks().stream()
                .map(block -> block.as(blocks))
                .collect(Collectors.joining(
                        "\n",
                        "<section class=\"sheet\" lang=\"" + HtmlBlocks.escaped(language) + "\" aria-label=\""
                                + HtmlBlocks.escaped(page.tab()) + "\">\n",
                        "\n</section>\n"));
    }

    private static void line(StringBuilder text, String element, String words) {
        if (!words.isEmpty()) {
            text.append('<')
                    .append(element)
                    .append('>')
                    .append(HtmlBlocks.escaped(words))
                    .append("</")
                    .append(element)
                    .append(">\n");
        }
    }

    private static String style() {
        try (InputStream in = Objects.requireNonNull(HtmlWriter.class.getResourceAsStream("sheet.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package boltlore.report.xlsx;

import boltlore.report.xlsx.PaperPage.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook beside what LibreOffice prints of it, and what is wrong with the print. Each offence names sheet, page and
 * text.
 *
 * @param pages of paper of each worksheet, by its name and in its order
 */
public record PrintedLaw(Map<String, Integer> pages, List<String> offences) {

    /** Margins as the writer sets them, in points. */
    private static final double FOOT = 0.5 * 72;

    private static final double HEAD = 0.45 * 72;
    private static final double SIDE = 0.45 * 72;

    private static final double ROUNDED = 2;
    static final double SMALLEST_TYPE = 8;

    /** Reads both; the PDF has an outline with an entry for each worksheet. */
    public static PrintedLaw of(Path workbook, Path pdf) throws IOException {
        Map<String, Integer> counts = new LinkedHashMap<>();
        List<String> offences = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook));
                PDDocument document = Loader.loadPDF(pdf.toFile())) {
            Map<String, Integer> first = new LinkedHashMap<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                first.put(item.getTitle(), document.getPages().indexOf(item.findDestinationPage(document)));
            }
            List<String> names = new ArrayList<>(first.keySet());
            for (int i = 0; i < names.size(); i++) {
                int from = first.get(names.get(i));
                int to = i + 1 < names.size() ? first.get(names.get(i + 1)) : document.getNumberOfPages();
                List<PaperPage> pages = new ArrayList<>();
                for (int page = from; page < to; page++) {
                    pages.add(PaperPage.of(document.getPage(page), FOOT));
                }
                counts.put(names.get(i), pages.size());
                XSSFSheet sheet = book.getSheet(names.get(i));
                String file = workbook.getFileName().toString().replace(".xlsx", "");
                offences.addAll(new SheetOnPaper(file + " / " + names.get(i), sheet, pages).offences());
            }
        }
        return new PrintedLaw(counts, offences);
    }

    /** What can be seen without the workbook: type, margins, edges, empty paper. */
    static List<String> ofPaper(List<PaperPage> pages) {
        List<String> offences = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            PaperPage page = pages.get(i);
            String at = "page " + (i + 1) + ": ";
            Map<String, List<String>> said = new HashMap<>();
            for (Word word : page.words()) {
                if (word.size() < SMALLEST_TYPE - 0.05) {
                    said.computeIfAbsent("type of %.1f points".formatted(word.size()), none -> new ArrayList<>())
                            .add(word.text());
                }
                if (word.cut()) {
                    said.computeIfAbsent("cut off", none -> new ArrayList<>()).add(word.text());
                }
                if (word.text().matches("#{2,}")) {
                    said.computeIfAbsent("number without room", none -> new ArrayList<>())
                            .add(word.text());
                }
            }
            said.forEach((what, words) -> offences.add(at + what + ", " + words.size() + " words: "
                    + String.join(" ", words.subList(0, Math.min(5, words.size())))));
            if (page.rightmostInk() > page.width() - SIDE + ROUNDED) {
                offences.add(at + "ink beyond the right margin, at %.0f points".formatted(page.rightmostInk()));
            }
            double used = (page.lowestInk() - HEAD) / (page.height() - HEAD - FOOT);
            if (i < pages.size() - 1 && used < 1 / 3.0) {
                offences.add(at + "only %.0f %% full".formatted(used * 100));
            }
        }
        return offences;
    }
}

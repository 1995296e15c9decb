package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.xlsx.PrintedLaw;
import boltlore.report.xlsx.PrintedPicture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * All sheets of some orders as LibreOffice prints them: none clips a word, prints smaller than eight points, leaves
 * headings behind, shrinks a box or tears signatures off; and how much paper they take, written to {@code
 * target/printed-pages.txt}. The system property {@code boltlore.printed} names other orders: 'bl-1001,bl-2001'.
 */
@DisplayName("The sheets of the demo orders as LibreOffice prints them")
class PrintedSheetsTest {

    private static final List<String> ORDERS =
            List.of(System.getProperty("boltlore.printed", "bl-1001,bl-2001").split(","));

    /** With air for a few more parts than the largest order of the demo has. */
    private static final int MOST_OF_ALL = 127;

    private static final int MOST_OF_A_KIT = 53;

    /** Where no packing list says what is in the kit. */
    private static final String CONTENTS = "contents";

    private static final List<String> WITH_EVERY_KIT = List.of("bill", CONTENTS, "picking-list", "powder-coat-batch");

    @Test
    void keep_the_law_of_pages_and_a_limit_of_paper(@TempDir Path folder) throws IOException, InterruptedException {
        Path paper = Files.createDirectory(folder.resolve("paper"));
        for (String order : ORDERS) {
            Ran.boltlore("kit", "--all", "catalog/orders/" + order + ".json", "--out", folder.resolve(order));
            for (Path book : books(folder.resolve(order))) {
                Files.copy(book, paper.resolve(order + " " + book.getFileName()));
            }
            Path alone = folder.resolve("alone").resolve(order);
            Ran.boltlore("kit", "catalog/orders/" + order + ".json", "--out", alone);
            for (Path book : books(alone)) {
                if (book.endsWith(CONTENTS + ".xlsx")) {
                    Files.copy(book, paper.resolve(order + " " + book.getFileName()));
                }
            }
        }
        PrintedPicture.convert(paper);
        List<String> offences = new ArrayList<>();
        List<String> table = new ArrayList<>();
        Map<String, Integer> pages = new LinkedHashMap<>();
        for (Path book : books(paper)) {
            PrintedLaw law = PrintedLaw.of(book, Path.of(book.toString().replace(".xlsx", ".pdf")));
            offences.addAll(law.offences());
            int count = law.pages().values().stream().mapToInt(each -> each).sum();
            String name = String.valueOf(book.getFileName()).replace(".xlsx", "");
            pages.put(name, count);
            table.add("%4d %s %s".formatted(count, name, law.pages()));
        }
        Files.write(Path.of("target", "printed-pages.txt"), table);
        assertThat(offences).as("offences").isEmpty();
        for (String order : ORDERS) {
            assertThat(sum(pages, order, name -> !name.endsWith(CONTENTS)))
                    .as("pages of all sheets, " + table)
                    .isBetween(20, MOST_OF_ALL);
            assertThat(sum(pages, order, name -> WITH_EVERY_KIT.stream().anyMatch(name::endsWith)))
                    .as("pages of the sheets of every kit, " + table)
                    .isBetween(10, MOST_OF_A_KIT);
        }
    }

    private static int sum(Map<String, Integer> pages, String order, Predicate<String> wanted) {
        return pages.entrySet().stream()
                .filter(each -> each.getKey().startsWith(order + " ") && wanted.test(each.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    private static List<Path> books(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".xlsx"))
                    .sorted()
                    .toList();
        }
    }
}

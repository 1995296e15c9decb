package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.xlsx.PrintedLaw;
import boltlore.report.xlsx.PrintedPicture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The sheets of the demo orders as LibreOffice prints them")
class PrintedSheetsTest {

    /** Names of orders, comma-separated: a longer look than the build takes. */
    private static final String ORDERS = System.getProperty("boltlore.printed", "bl-1001,bl-2001");

    @Test
    void keep_the_law_of_pages(@TempDir Path folder) throws IOException, InterruptedException {
        Path paper = Files.createDirectory(folder.resolve("paper"));
        for (String order : ORDERS.split(",")) {
            Ran.boltlore("kit", "--all", "catalog/orders/" + order + ".json", "--out", folder.resolve(order));
            for (Path book : books(folder.resolve(order))) {
                Files.copy(book, paper.resolve(order + "-" + book.getFileName()));
            }
        }
        PrintedPicture.convert(paper);
        List<String> offences = new ArrayList<>();
        Map<String, Integer> counts = new TreeMap<>();
        for (Path book : books(paper)) {
            PrintedLaw law = PrintedLaw.of(book, Path.of(book.toString().replace(".xlsx", ".pdf")));
            offences.addAll(law.offences());
            law.pages().forEach((sheet, pages) -> counts.put(book.getFileName() + " / " + sheet, pages));
        }
        Files.write(Path.of("/tmp/sh/offences.txt"), offences);
        assertThat(offences).as("offences").isEmpty();
    }

    private static List<Path> books(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".xlsx"))
                    .sorted()
                    .toList();
        }
    }
}

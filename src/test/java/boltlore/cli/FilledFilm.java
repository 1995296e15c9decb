package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The film record that 'coat' writes, with readings put in as the coating shop does. */
final class FilledFilm {

    private final List<String> headings;
    private final List<Map<String, String>> rows;

    private FilledFilm(List<String> headings, List<Map<String, String>> rows) {
        this.headings = headings;
        this.rows = rows;
    }

    /** Plans these orders into a new folder, with more options where there are some, and takes the record. */
    static FilledFilm of(Path out, Object... ordersAndOptions) throws IOException {
        Object[] words = Stream.of(new Object[] {"coat"}, ordersAndOptions, new Object[] {"--out", out})
                .flatMap(Stream::of)
                .toArray();
        Ran ran = boltlore(words);
        assertThat(ran.exit()).as(ran.toString()).isIn(Exit.OK, Exit.STOPPED);
        Path into = List.of(ordersAndOptions).contains("--again") ? out.resolve("again-2") : out;
        String text = Files.readString(into.resolve("csv/powder-coat-batch-film.csv"));
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().get();
        try (var parser = format.parse(new StringReader(text))) {
            return new FilledFilm(
                    parser.getHeaderNames(),
                    parser.stream().map(CSVRecord::toMap).map(FilledFilm::copy).toList());
        }
    }

    private static Map<String, String> copy(Map<String, String> row) {
        return new LinkedHashMap<>(row);
    }

    List<Map<String, String>> rows() {
        return rows;
    }

    /** All pieces of that batch, or of all batches where it is empty, with five times the same reading. */
    FilledFilm all(String batch, String um) {
        rows.stream()
                .filter(row -> batch.isEmpty() || row.get("batch").equals(batch))
                .forEach(row -> read(row, um));
        return this;
    }

    /** The piece 'PV-BL-S BL-1001 1'. */
    FilledFilm piece(String which, String um) {
        read(row(which), um);
        return this;
    }

    FilledFilm put(String which, String heading, String value) {
        row(which).put(heading, value);
        return this;
    }

    private Map<String, String> row(String which) {
        return rows.stream()
                .filter(row -> (row.get("part") + " " + row.get("piece")).equals(which))
                .findFirst()
                .orElseThrow();
    }

    private static void read(Map<String, String> row, String um) {
        IntStream.rangeClosed(1, 5).forEach(place -> row.put("reading " + place + " (µm)", um));
    }

    Path in(Path file) throws IOException {
        Stream<List<String>> values =
                rows.stream().map(row -> headings.stream().map(row::get).toList());
        String text = Stream.concat(Stream.of(headings), values)
                .map(line -> CSVFormat.RFC4180.format(line.toArray()) + "\r\n")
                .collect(Collectors.joining());
        return Files.writeString(file, text);
    }
}

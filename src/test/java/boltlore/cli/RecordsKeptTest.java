package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What somebody has filled in")
class RecordsKeptTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String SECOND = "catalog/orders/bl-1002.json";

    @TempDir
    Path folder;

    /** Every command that writes sheets, several of them into one folder, as a workshop with one folder an order does. */
    private void everythingWritten(Path catalogue) {
        Path kits = folder.resolve("kits");
        Path coating = folder.resolve("coating");
        for (String command : List.of(
                "kit --all",
                "kit",
                "axle-loads",
                "charging",
                "spares",
                "fixings",
                "ship",
                "price",
                "test",
                "cut",
                "coat")) {
            List<Object> words = new ArrayList<>(List.of(command.split(" ")));
            boolean together = command.startsWith("c") && !command.equals("charging");
            Path out = together ? coating : kits;
            words.addAll(List.of(FIRST, "--catalogue", catalogue, "--out", out));
            written(words.toArray());
        }
        written("coat", FIRST, SECOND, "--catalogue", catalogue, "--out", coating);
        written(
                "film-check",
                FIRST,
                "--catalogue",
                catalogue,
                "--record",
                folder.resolve("readings.json"),
                "--out",
                coating);
        written(
                "prove",
                "stook-pickup",
                "--trial-builds",
                "pairs",
                "--catalogue",
                catalogue,
                "--examples",
                folder.resolve("bench"));
    }

    private static void written(Object... command) {
        Ran ran = boltlore(command);
        assertThat(ran.exit()).as(List.of(command) + "\n" + ran).isIn(Exit.OK, Exit.STOPPED);
    }

    @Test
    @DisplayName("in any file of any sheet is still there after every command has run twice more")
    void every_file_of_every_sheet() throws IOException {
        Files.writeString(
                folder.resolve("readings.json"),
                "{\"readings\": [{\"limits\": \"F\", \"part\": \"PV-BL-S\", \"piece\": \"BL-1001 1\", \"um\": [70, 71, 69, 74, 70]}]}");
        everythingWritten(Path.of("catalog"));
        Map<Path, byte[]> filled = new TreeMap<>();
        for (Path file : files()) {
            fill(file);
            filled.put(file, Files.readAllBytes(file));
        }
        assertThat(filled).hasSizeGreaterThan(140);

        everythingWritten(Path.of("catalog"));
        everythingWritten(dearer());

        assertThat(filled).allSatisfy((file, content) -> assertThat(file).hasBinaryContent(content));
    }

    /** A word more in the second row of a table, as a person types it; in any other file a letter at its end. */
    private static void fill(Path file) throws IOException {
        if (file.toString().endsWith(".csv")) {
            String text = Files.readString(file);
            Files.writeString(file, text.replaceFirst("\\r\\n\\z|\\z", ",SN-4711\r\n"));
        } else {
            Files.writeString(file, " ", StandardOpenOption.APPEND);
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().contains("/.boltlore/"))
                    .filter(file -> !file.startsWith(folder.resolve("dearer")))
                    .toList();
        }
    }

    private Path dearer() throws IOException {
        return ChangedCatalogue.in(
                Files.createDirectories(folder.resolve("dearer")),
                "parts/pannier-drive.json",
                "\"cost\": \"4.54\"",
                "\"cost\": \"5.06\"");
    }

    @Test
    @DisplayName("as film readings is there after the plan was written again, and is judged")
    void film_readings() throws IOException {
        boltlore("coat", FIRST, "--out", folder);
        Path film = onlyFile("glob:**/csv/*film*.csv");
        String read = Files.readString(film)
                .lines()
                .map(line -> line.replaceFirst(",read,{6}", ",read,70,71,69,74,70,"))
                .reduce("", (all, line) -> all + line + "\r\n");
        Files.writeString(film, read);
        assertThat(read).contains("70,71,69,74,70");

        Ran again = boltlore("coat", FIRST, "--out", folder);
        boltlore("coat", FIRST, SECOND, "--out", folder);

        assertThat(again.exit()).as(again.toString()).isZero();
        assertThat(flat(again.err())).contains("was changed after it was written: it stays as it is.");
        assertThat(film).hasContent(read);
        Ran judged = boltlore("film-check", FIRST, "--record", film, "--out", folder);
        assertThat(judged.exit()).as(judged.toString()).isIn(Exit.OK, Exit.STOPPED);
        assertThat(film).hasContent(read);
    }

    @Test
    @DisplayName("as a test record is judged after a part became dearer, and refused after a limit changed")
    void test_record() throws IOException {
        Path record = FilledRecord.of(FIRST, folder.resolve("sheets"))
                .in(folder.resolve("sheets/BL-1001/json/end-of-line-test-record.json"));
        String filled = Files.readString(record);

        Path dearer = dearer();
        assertThat(boltlore("test", FIRST, "--catalogue", dearer, "--out", folder.resolve("sheets"))
                        .exit())
                .isZero();
        Ran judged = boltlore("test-result", record, "--catalogue", dearer, "--out", folder.resolve("sheets"));

        assertThat(judged.exit()).as(judged.toString()).isZero();
        assertThat(record).hasContent(filled);
        assertThat(folder.resolve("sheets/BL-1001/end-of-line-test.xlsx")).exists();
        Path stricter = ChangedCatalogue.in(
                Files.createDirectories(folder.resolve("stricter")),
                "families/pannier-van/tests.json",
                "\"limit\": {\"atMost\": \"20\"}",
                "\"limit\": {\"atMost\": \"19\"}");
        Ran refused = boltlore("test-result", record, "--catalogue", stricter, "--out", folder.resolve("report"));
        assertThat(refused.exit()).isEqualTo(Exit.FAULTS);
        assertThat(flat(refused.err())).contains("A limit, or what is tested, has changed since.");
        assertThat(folder.resolve("report")).doesNotExist();
    }

    @Test
    @DisplayName("counts where a test record has day, name and instrument and no value yet")
    void a_record_without_a_value() throws IOException {
        boltlore("test", FIRST, "--out", folder);
        Path record = folder.resolve("BL-1001/csv/end-of-line-test-record.csv");
        String begun = Files.readString(record).replaceAll(",,(ohm|V),,,\r", ",,$1,M-7,R. Oakes,2026-03-30\r");
        assertThat(begun).contains("R. Oakes");
        Files.writeString(record, begun);

        boltlore("test", FIRST, "--out", folder);

        assertThat(record).hasContent(begun);
    }

    @Test
    @DisplayName("stays beside a new sheet where the new one differs, and the sentence names both")
    void beside() throws IOException {
        boltlore("kit", FIRST, "--out", folder);
        Path bill = folder.resolve("BL-1001/bill.xlsx");
        Files.writeString(bill, "mine", StandardCharsets.UTF_8);

        Ran ran = boltlore("kit", FIRST, "--catalogue", dearer(), "--out", folder);

        assertThat(ran.exit()).as(ran.toString()).isZero();
        assertThat(flat(ran.err()))
                .contains(
                        bill + " was changed after it was written: it stays as it is, and what is new is bill.new.xlsx"
                                + " beside it.");
        assertThat(bill).hasContent("mine");
        assertThat(folder.resolve("BL-1001/bill.new.xlsx")).exists();
    }

    @Test
    @DisplayName("and the other trades' sheets stay when the kit is written again without them")
    void kit_after_all() throws IOException {
        boltlore("kit", "--all", FIRST, "--out", folder);
        List<Path> all = files();

        boltlore("kit", FIRST, "--catalogue", dearer(), "--out", folder);
        boltlore("axle-loads", FIRST, "--out", folder);

        // The contents list stands for the packing list again: no two lists of one kit lie side by side.
        List<Path> stay = all.stream()
                .filter(file -> !file.getFileName().toString().startsWith("packing-list"))
                .toList();
        assertThat(files())
                .containsAll(stay)
                .anyMatch(file -> file.endsWith("cutting-list.xlsx"))
                .noneMatch(file -> file.endsWith("packing-list.xlsx"));
    }

    @Test
    @DisplayName("or written before stays where no quotation can be made any more")
    void quotation_stays() throws IOException {
        String order = Files.readString(Path.of("catalog/orders/bl-1010.json"));
        Path file = Files.writeString(folder.resolve("bl-1010.json"), order);
        Ran first = boltlore("kit", "--all", file, "--out", folder.resolve("kits"));
        assertThat(first.exit()).as(first.toString()).isZero();
        List<Path> all = files();
        Files.writeString(
                file,
                order.replace("\"placed\": \"2026-", "\"placed\": \"2031-")
                        .replace("\"due\": \"2026-", "\"due\": \"2031-"));

        Ran second = boltlore("kit", "--all", file, "--out", folder.resolve("kits"));

        assertThat(second.out()).contains("no price");
        assertThat(files()).containsAll(all);
    }

    @Test
    @DisplayName("or any quotation written before does not keep a price from being worked out again")
    void price_again() {
        for (int time = 0; time < 3; time++) {
            Ran ran = boltlore("price", FIRST, "--out", folder);
            assertThat(ran.exit()).as(ran.toString()).isZero();
        }
    }

    @Test
    @DisplayName("in an order file is not overwritten by remnants, a report or witnesses")
    void single_files() throws IOException {
        Path order = Files.writeString(folder.resolve("ord.json"), "mine");

        Ran cut = boltlore("cut", FIRST, "--out", folder.resolve("cutting"), "--left", order);
        Ran proof = boltlore("prove", "stook-pickup", "--within", "1ms", "--report", order);

        assertThat(List.of(cut, proof)).allSatisfy(ran -> {
            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.NOT_WRITTEN);
            assertThat(flat(ran.err())).contains("something that this program has not written");
        });
        assertThat(order).hasContent("mine");
    }

    @Test
    @DisplayName("as remnants is replaced only where nobody has changed it")
    void remnants() throws IOException {
        Path left = folder.resolve("left.json");
        assertThat(boltlore("cut", FIRST, "--out", folder.resolve("cutting"), "--left", left)
                        .exit())
                .isZero();
        assertThat(boltlore("cut", SECOND, "--remnants", left, "--out", folder.resolve("cutting"), "--left", left)
                        .exit())
                .isZero();
        Files.writeString(left, Files.readString(left) + "\n");

        Ran refused = boltlore("cut", SECOND, "--out", folder.resolve("cutting"), "--left", left);

        assertThat(refused.exit()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(flat(refused.err())).contains("a file that was changed after it was written");
    }

    private Path onlyFile(String glob) throws IOException {
        return files().stream()
                .filter(folder.getFileSystem().getPathMatcher(glob)::matches)
                .findFirst()
                .orElseThrow();
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}

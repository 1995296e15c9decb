package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.sketch.CatalogueSketch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A sheet that asks for cautions of its own")
class SheetCautionsTest {

    private static final Pattern ALWAYS =
            Pattern.compile("CautionNotes\\.always(?:On)?\\([^;]*?\"([a-z]+(?:-[a-z]+)*)\"");
    private static final Pattern CONSTANT = Pattern.compile("IN_OUR_SHOP = \"([a-z-]+)\"");

    @TempDir
    private Path folder;

    /** The demo with other text in its cautions. */
    private List<Remark> remarks(UnaryOperator<String> edit) throws IOException {
        Path copy = folder.resolve("catalog");
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(each, copy.resolve(Path.of("catalog").relativize(each)));
            }
        }
        Path cautions = copy.resolve("workshop/cautions.json");
        Files.writeString(cautions, edit.apply(Files.readString(cautions)));
        Outcome<Catalogue> read = CatalogueReader.read(copy);
        assertThat(read.faults()).isEmpty();
        return Checks.check(((Outcome.Sound<Catalogue>) read).value());
    }

    @Test
    void is_told_where_no_caution_names_it_one_by_one() throws IOException {
        String onBill = "\"sheets\": [\"bill\"]";

        List<Remark> remarks =
                remarks(text -> text.replaceAll("\"sheets\": \\[[^]]*\\], \"always\": \\[[^]]*\\]", onBill)
                        .replaceAll("\"always\": \\[[^]]*\\]", onBill));

        assertThat(remarks).extracting(Remark::check).containsOnly(Check.SHEET_CAUTION);
        assertThat(remarks)
                .extracting(Remark::about)
                .containsExactlyInAnyOrderElementsOf(SheetCautions.SHEETS.keySet().stream()
                        .map(sheet -> "sheet " + sheet)
                        .toList());
    }

    @Test
    void is_told_alone_where_only_its_own_is_missing() throws IOException {
        assertThat(remarks(text -> text.replace("\"always\": [\"inlet-loom\"]", "\"always\": [\"charging\"]")))
                .containsExactly(new Remark(
                        "sheet inlet-loom",
                        Check.SHEET_CAUTION,
                        "no caution that names it under 'always'",
                        "the cautions for whoever works by that sheet",
                        "Name the sheet under 'always' of its cautions in workshop/cautions.json"));
    }

    @Test
    void is_not_missed_of_a_trade_that_the_workshop_does_not_work_with() {
        assertThat(Checks.check(new CatalogueSketch().draw()))
                .extracting(Remark::about)
                .contains("sheet coating-shop", "sheet coating-outside")
                .doesNotContain(
                        "sheet charging", "sheet fixings", "sheet cutting", "sheet crates", "sheet weighbridge");
    }

    @Test
    @DisplayName("is known to the check, each that the code prints cautions on")
    void every_sheet_of_the_code() throws IOException {
        Set<String> printed = new TreeSet<>();
        try (Stream<Path> all = Files.walk(Path.of("src/main/java/boltlore/trades"))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(file);
                Stream.of(ALWAYS, CONSTANT)
                        .flatMap(pattern -> pattern.matcher(text).results())
                        .map((MatchResult found) -> found.group(1))
                        .filter(name -> !name.equals("en"))
                        .forEach(printed::add);
            }
        }
        assertThat(SheetCautions.SHEETS.keySet()).containsExactlyInAnyOrderElementsOf(printed);
    }
}

package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ChecksTest {

    @Test
    @DisplayName("The catalogue that we ship hangs together")
    void shipped_catalogue() {
        Outcome<Catalogue> read = CatalogueReader.read(Path.of("catalog"));
        assertThat(read.faults()).isEmpty();
        assertThat(Checks.check(((Outcome.Sound<Catalogue>) read).value())).isEmpty();
    }

    @Test
    void remarks_come_by_subject_then_by_check() {
        assertThat(Remarked.in(
                        PartSketch.bought("B").cost("0").leadDays(0),
                        PartSketch.bought("A").leadDays(0)))
                .containsExactly(
                        "part A: bought, but not from whom or when",
                        "part B: costs nothing",
                        "part B: bought, but not from whom or when");
    }

    @Test
    void a_remark_says_what_stands_there_and_what_to_do() {
        List<Remark> remarks = Checks.check(new CatalogueSketch()
                .sheetCautions(SheetCautions.SHEETS.keySet())
                .part(PartSketch.bought("A").leadDays(0))
                .draw());
        assertThat(remarks)
                .containsExactly(new Remark(
                        "part A",
                        Check.BUYING,
                        "no lead days",
                        "supplier, supplier part number (orderCode) and lead days of a bought part",
                        "Ask purchasing"));
    }
}

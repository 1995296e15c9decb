package boltlore.scale;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.scale.SideBySide.Measured;
import boltlore.scale.SideBySide.Question;
import boltlore.scale.SideBySide.Who;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("This program beside plain loops, a general solver and a workbook of formulas")
class SideBySideTest {

    @TempDir
    private Path folder;

    /** Answers that differ end the measuring with an exception. */
    @Test
    void all_four_answer_alike_on_a_small_family() throws Exception {
        MadeCatalogue.write(folder, 40, 5, 7);
        Catalogue catalogue = ((Outcome.Sound<Catalogue>) CatalogueReader.read(folder)).value();

        Measured measured = SideBySide.measure(catalogue, MadeCatalogue.FAMILY, 60_000);

        assertThat(measured.milliseconds().get(Question.ALL))
                .containsOnlyKeys(Who.values())
                .allSatisfy((who, time) -> assertThat(time).as(who.says).isFinite());
    }

    @Test
    void the_table_shows_ratios_and_who_did_not_answer_in_time() {
        Map<Who, Double> times =
                new EnumMap<>(Map.of(Who.PROGRAM, 2.0, Who.LOOPS, 5.0, Who.SOLVER, Double.POSITIVE_INFINITY));

        assertThat(SideBySideTable.text(List.of(new Measured("made", 3, "12", Map.of(Question.COUNT, times))))
                        .lines()
                        .map(line -> line.replaceAll(" {2,}", " | "))
                        .toList())
                .containsExactly(
                        "milliseconds an answer | this program | plain loops | times as long | general solver"
                                + " | times as long | workbook | times as long",
                        "made, 3 options, valid orders: 12",
                        " | count of valid orders | 2.00 | 5.00 | 2.5 | not in time | - | - | -");
    }
}

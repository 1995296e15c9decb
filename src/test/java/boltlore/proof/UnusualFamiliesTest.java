package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import boltlore.proof.evidence.Evidence;
import boltlore.proof.sample.Sampler;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigInteger;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Families at the ends of what one may write: hardly anything to choose, very much to choose, more orders than atoms. */
class UnusualFamiliesTest {

    private static CatalogueSketch oneLine() {
        return new CatalogueSketch()
                .part(PartSketch.bought("P-1").bin("F-01-01-A-01"))
                .position(PositionSketch.at("place").line("line", "P-1", "1"));
    }

    private static FamilyProof prove(Catalogue catalogue) {
        return DemoFamily.prove(catalogue, CatalogueSketch.FAMILY);
    }

    private static List<String> titles(FamilyProof proof) {
        return proof.defects().map(defect -> defect.statement().title()).toList();
    }

    @Test
    void a_family_without_any_option_has_one_order() {
        FamilyProof proof = prove(oneLine().draw());

        assertThat(proof.orders()).isEqualTo(new Count.Exactly(BigInteger.ONE));
        assertThat(titles(proof)).containsExactly("part in every order: P-1");
    }

    @Test
    void an_option_with_one_value_is_not_called_forced() {
        FamilyProof proof = prove(oneLine().option("only", "this").draw());

        assertThat(proof.orders()).isEqualTo(new Count.Exactly(BigInteger.ONE));
        assertThat(titles(proof)).containsExactly("part in every order: P-1");
    }

    @Test
    void ten_thousand_values_are_proved_counted_and_written_in_seconds() {
        List<OptionValue> values = IntStream.range(0, 10_000)
                .mapToObj(number -> new OptionValue("v" + number, Wording.english("Value " + number), Facts.NONE))
                .toList();
        Catalogue small = oneLine().option("other", "yes", "no").draw();
        List<Option> options = List.of(
                small.family(CatalogueSketch.FAMILY).options().get(0),
                new Option(new OptionName("many"), "Which of many?", null, values, null, List.of()));
        Catalogue large = Altered.with(
                small,
                "families",
                Map.of(CatalogueSketch.FAMILY, Altered.with(small.family(CatalogueSketch.FAMILY), "options", options)));
        long before = System.nanoTime();

        FamilyProof proof = prove(large);

        assertThat(proof.orders()).isEqualTo(new Count.Exactly(BigInteger.valueOf(20_000)));
        assertThat(titles(proof)).containsExactly("part in every order: P-1");
        assertThat(Evidence.write(proof, (name, text) -> {}))
                .isEqualTo(proof.answers().size());
        assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(Duration.ofMinutes(2));
    }

    @Test
    void counts_beyond_enumeration_are_checked_by_a_second_diagram() {
        Catalogue large = GeneratedFamily.of(200, 40, 60, 3);
        FamilyProof proof = DemoFamily.prove(large, "van");

        assertThat(proof.orders()).isInstanceOf(Count.Exactly.class);
        assertThat(((Count.Exactly) proof.orders()).orders()).isGreaterThan(BigInteger.TEN.pow(9));
        assertThat(proof.defects().filter(defect -> defect.witness().isPresent()))
                .allSatisfy(defect ->
                        assertThat(defect.touched().checkedBy()).isEqualTo("a second diagram, ordered backwards"));
    }

    @Test
    void a_sample_of_a_large_family_ends_when_the_time_is_up() {
        Deadline until = Deadline.in(Duration.ofMillis(300).toNanos(), System::nanoTime);

        assertThat(Sampler.draw(GeneratedFamily.of(50, 60, 120, 1).family("van"), 2, until)
                        .orElseThrow()
                        .complete())
                .isFalse();
    }
}

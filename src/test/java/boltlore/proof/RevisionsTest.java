package boltlore.proof;

import static boltlore.proof.Says.all;
import static boltlore.proof.Says.is;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.measure.PartNumber;
import boltlore.order.LeftOut;
import boltlore.proof.revision.Case;
import boltlore.proof.revision.PartChange;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.Revisions;
import boltlore.resolution.Resolution;
import boltlore.resolution.rules.RuleResolver;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What an edit of the demo van changes, against what one sees by looking at every order. */
class RevisionsTest {

    private static Revision compare(Broken edited) {
        return Revisions.compare(DemoFamily.catalogue(), edited.catalogue(), DemoFamily.VAN, Deadline.NONE);
    }

    private static Count exactly(long orders) {
        return new Count.Exactly(BigInteger.valueOf(orders));
    }

    private static long ordersWith(Condition condition) {
        Family van = DemoFamily.catalogue().family(DemoFamily.VAN);
        long variants = PlainVariants.list(van).orElseThrow().stream()
                .filter(variant -> new boltlore.logic.Truth(variant).of(condition))
                .count();
        return variants * PlainVariants.ordersEach(van).longValueExact();
    }

    private static List<String> cases(Revision revision) {
        return revision.cases().orElseThrow().stream().map(Case::toString).toList();
    }

    private static List<String> parts(Revision revision) {
        return revision.parts().stream()
                .map(PartChange::part)
                .map(PartNumber::text)
                .toList();
    }

    @Test
    void the_same_revision_changes_nothing() {
        Revision revision = compare(new Broken());

        assertThat(revision.parts()).isEmpty();
        assertThat(revision.changed()).isEqualTo(exactly(0));
        assertThat(revision.both()).isEqualTo(exactly(14_868));
        assertThat(revision.onlyBefore()).isEqualTo(exactly(0));
        assertThat(revision.onlyAfter()).isEqualTo(exactly(0));
        assertThat(revision.example()).isEmpty();
        assertThat(revision.decided()).isTrue();
    }

    @Test
    @DisplayName("a second loom on left-hand vans with Type 2 changes exactly those")
    void one_line_changes_one_case() {
        Revision revision = compare(new Broken().line("inlet-loom-type-2-left", "quantity", new BigDecimal("2")));

        long touched = ordersWith(all(is("drive-side", "left"), is("inlet", "type-2")));
        assertThat(parts(revision)).contains("PV-WL-I2L");
        assertThat(revision.changed()).isEqualTo(exactly(touched));
        assertThat(cases(revision)).containsExactly("drive-side=left, inlet=type-2");
        assertThat(revision.parts().get(parts(revision).indexOf("PV-WL-I2L")).differences())
                .containsExactly(BigDecimal.ONE);
    }

    @Test
    void a_part_with_another_revision_makes_another_kit_of_each_that_holds_it() {
        Revision revision = compare(new Broken().part("LV-SND", "revision", "Z"));

        assertThat(revision.parts()).isEmpty();
        assertThat(revision.changed()).isEqualTo(exactly(ordersWith(is("market", "europe", "united-kingdom"))));
        assertThat(revision.edits()).singleElement().satisfies(edit -> {
            assertThat(edit.part().text()).isEqualTo("LV-SND");
            assertThat(edit.what())
                    .singleElement()
                    .satisfies(what -> assertThat(what.after()).isEqualTo("Z"));
        });
    }

    @Test
    void mass_drawing_coat_and_price_are_looked_at_and_the_bin_is_not() {
        Broken edited = new Broken()
                .part("LV-SND", "massKg", new BigDecimal("9.9"))
                .part("LV-ES", "coat", null)
                .part("BM-44", "cost", new BigDecimal("1.00"))
                .part("LV-BOX", "bin", "L-01-01-A-01");

        assertThat(compare(edited).edits())
                .extracting(edit -> edit.part() + " " + edit.what().get(0).what())
                .contains("LV-SND mass", "BM-44 price")
                .noneMatch(edit -> edit.startsWith("LV-BOX"));
        assertThat(compare(new Broken().part("BM-44", "cost", new BigDecimal("1.00")))
                        .edits())
                .singleElement()
                .satisfies(edit -> assertThat(edit.what())
                        .singleElement()
                        .satisfies(what -> assertThat(what.after()).isEqualTo("EUR 1.00")));
    }

    @Test
    void a_condition_said_in_other_words_changes_nothing() {
        Revision revision = compare(new Broken()
                .line("battery-box-later", "when", Says.not(is("body-era", "early")))
                .line("sounder", "when", Says.any(is("market", "europe"), is("market", "united-kingdom"))));

        assertThat(revision.parts()).isEmpty();
        assertThat(revision.changed()).isEqualTo(exactly(0));
    }

    @Test
    void a_part_that_is_swapped_for_another_goes_out_and_comes_in() {
        Revision revision = compare(new Broken().line("sounder", "part", new PartNumber("LV-CRA")));

        long touched = ordersWith(is("market", "europe", "united-kingdom"));
        assertThat(parts(revision)).contains("LV-SND", "LV-CRA");
        assertThat(revision.changed()).isEqualTo(exactly(touched));
        assertThat(cases(revision)).containsExactly("market=europe or united-kingdom");
        assertThat(revision.example().orElseThrow().before().get(new PartNumber("LV-SND")))
                .isEqualByComparingTo("1");
        assertThat(revision.example().orElseThrow().after().get(new PartNumber("LV-SND")))
                .isEqualByComparingTo("0");
    }

    @Test
    void a_limit_that_is_taken_out_lets_more_orders_in_and_changes_no_kit() {
        Broken edited = new Broken().withoutLimit("english-labels");
        Revision revision = compare(edited);

        assertThat(revision.parts()).isEmpty();
        assertThat(revision.onlyBefore()).isEqualTo(exactly(0));
        Family after = edited.catalogue().family(DemoFamily.VAN);
        long more = PlainVariants.list(after).orElseThrow().size()
                        * PlainVariants.ordersEach(after).longValueExact()
                - 14_868;
        assertThat(revision.onlyAfter()).isEqualTo(exactly(more));
        assertThat(revision.both()).isEqualTo(exactly(14_868));
    }

    @Test
    void a_new_limit_shuts_orders_out() {
        Revision revision = compare(new Broken().never("no-green", is("colour", "green")));

        assertThat(revision.onlyBefore()).isEqualTo(exactly(14_868 / 3));
        assertThat(revision.both()).isEqualTo(exactly(14_868 / 3 * 2));
        assertThat(revision.onlyAfter()).isEqualTo(exactly(0));
    }

    @Test
    void a_value_that_only_the_later_revision_has_is_valid_there_only() {
        Revision revision = compare(new Broken().value("colour", "blue"));

        assertThat(revision.both()).isEqualTo(exactly(14_868));
        assertThat(revision.onlyAfter()).isEqualTo(exactly(14_868 / 3));
        assertThat(revision.onlyBefore()).isEqualTo(exactly(0));
    }

    @Test
    void an_option_that_only_the_later_revision_has_is_told() {
        Revision revision = compare(new Broken()
                .option("tow-bar", "yes", "no")
                .line("build-plate-europe", "when", all(is("market", "europe"), is("tow-bar", "no"))));

        assertThat(revision.newOptions()).extracting(Object::toString).containsExactly("tow-bar");
        assertThat(revision.both()).isEqualTo(exactly(2 * 14_868));
        assertThat(cases(revision)).containsExactly("market=europe, tow-bar=yes");
        assertThat(revision.changed()).isEqualTo(exactly(ordersWith(is("market", "europe"))));
    }

    @Test
    @DisplayName("the example has before and after the quantities that the rules find in both revisions")
    void the_example_is_as_the_rules_have_it() {
        Broken edited = new Broken()
                .line("module-monitors-two", "quantity", new BigDecimal("18"))
                .line("lifting-eyes-two", "quantity", new BigDecimal("6"));
        Revision revision = compare(edited);

        Choices order = revision.example().orElseThrow().order();
        assertThat(cases(revision)).containsExactly("battery=two-strings");
        assertThat(revision.example().orElseThrow().before())
                .allSatisfy((part, quantity) ->
                        assertThat(quantity).isEqualByComparingTo(byRules(DemoFamily.catalogue(), order, part)));
        assertThat(revision.example().orElseThrow().after())
                .isNotEmpty()
                .allSatisfy((part, quantity) ->
                        assertThat(quantity).isEqualByComparingTo(byRules(edited.catalogue(), order, part)));
    }

    private static BigDecimal byRules(Catalogue catalogue, Choices order, PartNumber part) {
        Choices own = Choices.of(catalogue.family(DemoFamily.VAN), order.values());
        Resolution resolution = ((boltlore.faults.Outcome.Sound<Resolution>)
                        new RuleResolver(catalogue).resolve(own, new LeftOut.Undecided()))
                .value();
        return ((Resolution.Resolved) resolution).kit().quantities().getOrDefault(part, BigDecimal.ZERO);
    }

    @Test
    void two_edits_at_once_are_told_as_cases_of_which_none_can_be_dropped() {
        Revision revision = compare(new Broken()
                .line("sounder", "quantity", new BigDecimal("2"))
                .line("lifting-eyes-two", "quantity", new BigDecimal("6")));

        assertThat(cases(revision)).containsExactlyInAnyOrder("market=europe or united-kingdom", "battery=two-strings");
        assertThat(revision.changed())
                .isEqualTo(exactly(
                        ordersWith(Says.any(is("market", "europe", "united-kingdom"), is("battery", "two-strings")))));
    }

    @Test
    void what_there_was_no_time_for_is_named() {
        Deadline none = Deadline.in(0, System::nanoTime);
        none.stop();

        Broken edited = new Broken().line("lifting-eyes-two", "quantity", new BigDecimal("6"));
        Revision revision = Revisions.compare(DemoFamily.catalogue(), edited.catalogue(), DemoFamily.VAN, none);

        assertThat(revision.decided()).isFalse();
        assertThat(revision.unproved()).contains(new PartNumber("FX-EYE10"));
    }
}

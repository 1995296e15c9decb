package boltlore.trades.picking;

import static boltlore.trades.picking.SampleStores.list;
import static boltlore.trades.picking.SampleStores.withAir;
import static boltlore.trades.picking.SampleStores.withoutAir;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Waiver;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PickingListTest {

    private static final Waiver SHIPS =
            new Waiver("bracket not needed", "", "Owner", LocalDate.of(2025, 3, 15), "It ships.");

    private static List<String> walk(PickingList list) {
        return list.walk().stream().map(PickingListTest::text).toList();
    }

    private static List<String> fromCoating(PickingList list) {
        return list.fromCoating().stream()
                .map(coated -> text(coated.row()) + " " + coated.row().finish() + " " + coated.coatedAt())
                .map(String::strip)
                .toList();
    }

    private static List<String> onHold(PickingList list) {
        return list.onHold().stream()
                .map(held -> held.part().number() + " " + held.quantity() + " " + held.brackets())
                .toList();
    }

    private static String text(PickRow row) {
        String stages = row.byStage().stream()
                .map(stage -> stage.stage() + " " + stage.quantity())
                .collect(Collectors.joining(", "));
        return row.part().number() + " " + row.quantity() + " (" + stages + ")";
    }

    private static PickRow row(PickingList list, String part) {
        return list.walk().stream()
                .filter(row -> row.part().number().text().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Nested
    class The_walk {

        @Test
        void has_one_row_for_each_part_in_walking_order_split_by_fit_stage() {
            assertThat(walk(list(withAir())))
                    .containsExactly(
                            "FX-M8 15 (front 7, cabin 8)",
                            "FX-M12 6 (front 4, rear 2)",
                            "SP-1 2 (front 2)",
                            "CO-1 1 (front 1)",
                            "HE-1 1 (front 1)",
                            "BX-1 1 (rear 1)",
                            "TS-LEG 8 (rear 8)",
                            "HO-16 1.5 (front 1.5)",
                            "XM-1 1 (rear 1)");
        }

        @Test
        void takes_a_stocked_assembly_whole_and_one_that_is_not_stocked_apart() {
            assertThat(walk(list(withAir())))
                    .contains("BX-1 1 (rear 1)", "TS-LEG 8 (rear 8)")
                    .noneMatch(row -> row.startsWith("BM-1") || row.startsWith("TS-1"));
        }

        @Test
        @DisplayName("adds the spares of all bags: one for 4, one for 8, one for 3")
        void adds_spares() {
            assertThat(row(list(withAir()), "FX-M8").spares()).isEqualByComparingTo("3");
            assertThat(row(list(withAir()), "FX-M12").spares()).isZero();
        }

        @Test
        void names_the_cautions_of_what_is_inside_but_none_meant_for_other_sheets() {
            assertThat(row(list(withAir()), "BX-1").cautions()).containsExactly("lift-two", "lithium");
            assertThat(row(list(withAir()), "HE-1").cautions()).containsExactly("high-voltage");
            assertThat(list(withAir()).cautions()).containsExactly("high-voltage", "lift-two", "lithium");
        }
    }

    @Nested
    class What_is_coated_for_the_kit {

        @Test
        void stands_apart_in_its_finish_with_its_coater() {
            assertThat(fromCoating(list(withAir())))
                    .containsExactly(
                            "BR-1 2 (rear 2) black", "BR-9 1 (front 1) black", "PN-1 2 (cabin 2) zinc Coater B");
        }

        @Test
        void is_in_the_bags_of_its_stage() {
            assertThat(list(withAir()).bags().get(1).rows())
                    .extracting(
                            row -> row.bag() + " " + row.part().number() + " " + row.finish() + " " + row.quantity())
                    .containsExactly("C1 FX-M8  8", "C1 PN-1 zinc 2");
        }
    }

    @Nested
    class An_unused_bracket {

        @Test
        void that_nobody_has_decided_on_is_held_back_with_what_it_alone_brings() {
            PickingList list = list(withoutAir());
            assertThat(onHold(list))
                    .containsExactly(
                            "FX-M8 3 [compressor-bracket]",
                            "FX-M12 2 [compressor-bracket]",
                            "SP-1 2 [compressor-bracket]",
                            "BR-9 1 [compressor-bracket]");
            assertThat(fromCoating(list)).noneMatch(row -> row.startsWith("BR-9"));
        }

        @Test
        @DisplayName("leaves to the others what they need of a shared joint: 2 of its 4 bolts")
        void leaves_the_shared_joint_to_others() {
            assertThat(walk(list(withoutAir())))
                    .contains("FX-M12 4 (rear 4)", "FX-M8 12 (front 4, cabin 8)")
                    .noneMatch(row -> row.startsWith("SP-1"));
        }

        @Test
        void that_carries_something_is_not_held_back() {
            assertThat(list(withAir()).onHold()).isEmpty();
        }

        @Test
        void that_is_kept_is_picked() {
            PickingList list = list(withoutAir().leftOut(new LeftOut.Keep()));
            assertThat(list.onHold()).isEmpty();
            assertThat(fromCoating(list)).contains("BR-9 1 (front 1) black");
        }

        @Test
        void that_someone_answers_for_is_picked() {
            PickingList list = list(withoutAir().waived(SHIPS));
            assertThat(list.onHold()).isEmpty();
            assertThat(fromCoating(list)).contains("BR-9 1 (front 1) black");
        }

        @Test
        void that_is_left_out_is_nowhere() {
            Set<LineName> lines = Set.of(new LineName("compressor-bracket"));
            PickingList list = list(withoutAir().leftOut(new LeftOut.These(new TreeSet<>(lines))));
            assertThat(list.onHold()).isEmpty();
            assertThat(fromCoating(list)).noneMatch(row -> row.startsWith("BR-9"));
        }
    }

    @Nested
    class An_extra {

        private static final Extra OWN_PART = extra("BM-1", "", false);
        private static final Extra CUSTOMERS_PART = extra("TL-KEY", "", true);
        private static final Extra ONE_OFF = extra(null, "Engraved plate", false);

        private static Extra extra(@org.jspecify.annotations.Nullable String part, String says, boolean customer) {
            PartNumber number = part == null ? null : new PartNumber(part);
            return new Extra(number, says, BigDecimal.ONE, "each", null, null, customer, "Asked for.");
        }

        @Test
        void stands_apart_and_not_on_the_walk() {
            PickingList list = list(withAir().extra(OWN_PART, CUSTOMERS_PART, ONE_OFF));
            assertThat(list.extras()).extracting(ExtraRow::bin).containsExactly("H-01-01-A-02", "", "");
            assertThat(walk(list)).isEqualTo(walk(list(withAir())));
        }

        @Test
        void brings_its_cautions_to_the_head_of_the_list() {
            PickingList list = list(withAir().extra(OWN_PART, ONE_OFF));
            assertThat(list.extras())
                    .extracting(ExtraRow::cautions)
                    .containsExactly(List.of("lift-two", "lithium"), List.of());
        }
    }

    @Nested
    class The_bags {

        @Test
        void come_by_fit_stage_in_fitting_order() {
            assertThat(list(withAir()).bags()).extracting(BagPage::stage).containsExactly("front", "cabin", "rear");
        }

        @Test
        void of_a_stage_list_what_goes_in_each_with_its_spares_and_loose_parts_last() {
            Stream<String> rows = list(withAir()).bags().get(0).rows().stream()
                    .map(row -> row.bag() + ": " + row.part().number() + " " + row.quantity() + " + " + row.spares());
            assertThat(rows)
                    .containsExactly(
                            "F1: FX-M8 4 + 1",
                            "F1: HE-1 1 + 0",
                            "F2: BR-9 1 + 0",
                            "F2: FX-M12 4 + 0",
                            "F2: FX-M8 3 + 1",
                            "F2: SP-1 2 + 0",
                            ": CO-1 1 + 0",
                            ": HO-16 1.5 + 0");
        }

        @Test
        void together_hold_exactly_what_is_handed_out() {
            PickingList list = list(withAir());
            assertThat(sum(list.bags().stream()
                            .flatMap(page -> page.rows().stream())
                            .map(BagRow::quantity)))
                    .isEqualByComparingTo(sum(Stream.concat(
                                    list.walk().stream(),
                                    list.fromCoating().stream().map(CoatedRow::row))
                            .map(PickRow::quantity)));
        }

        private static BigDecimal sum(Stream<BigDecimal> quantities) {
            return quantities.reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }
}

package boltlore.trades.coating;

import static boltlore.trades.coating.SampleOrders.order;
import static boltlore.trades.coating.SampleShop.OWN_BLACK;
import static boltlore.trades.coating.SampleShop.OWN_TWO_COAT;
import static boltlore.trades.coating.SampleShop.ZINC_BY_AREA;
import static boltlore.trades.coating.SampleShop.ZINC_BY_PIECE;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Part;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.trades.FoundBy;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CoatSheetTest {

    private static final Catalogue CATALOGUE =
            SampleOrders.catalogue("PB-BLACK", OWN_BLACK, OWN_TWO_COAT, ZINC_BY_AREA, ZINC_BY_PIECE);

    private static final Part PLAIN = SampleShop.part("PL-1", SampleShop.coat("0.2"));
    private static final Part MASKED = SampleShop.part(
            "MA-1",
            SampleShop.coat(
                    "0.5",
                    new Feature(Feature.Kind.THREAD, "M8", 4, Feature.Treat.MASKED),
                    new Feature(Feature.Kind.THREAD, "M10", 2, Feature.Treat.CHASED)));
    private static final Part EARTHED = SampleShop.part(
            "EA-1", SampleShop.coat("0.5", new Feature(Feature.Kind.EARTH, "20", 1, Feature.Treat.MASKED)));

    static Stream<CheckRow> gauges() {
        return CheckTable.rows("coating-thickness-acceptance.csv", "CT-33");
    }

    private static Report sheet(SampleOrders... orders) {
        CoatJob job = job(orders);
        return CoatSheet.compose(job, CoatingFindings.find(job));
    }

    private static CoatJob job(SampleOrders... orders) {
        return CoatJob.of(
                CoatPlanner.plan(Stream.of(orders).map(SampleOrders::bill).toList(), CATALOGUE), CATALOGUE);
    }

    private static List<String> found(SampleOrders order) {
        return CoatingFindings.find(job(order)).all().stream()
                .map(finding -> finding.severity().code() + " " + FoundBy.name(finding))
                .toList();
    }

    private static String text(Report report) {
        return SheetWords.of(report);
    }

    @Nested
    class Pages {

        @Test
        void batches_and_runs_flow_on_and_each_send_out_has_its_page() {
            Report sheet = sheet(order("BL-1").with(1, PLAIN, OWN_BLACK).with(1, MASKED, ZINC_BY_AREA));
            assertThat(sheet.pages())
                    .extracting(Page::name)
                    .containsExactly("Overview", "Powders", "Film", "Send-out 2");
        }

        @Test
        void earth_points_of_sent_out_pieces_are_measured_when_they_are_back() {
            Report sheet = sheet(order("BL-1").with(1, EARTHED, ZINC_BY_AREA));
            assertThat(sheet.pages()).extracting(Page::name).containsExactly("Overview", "Send-out 1");
            assertThat(sheet.page("Send-out 1").tables())
                    .extracting(Table::name)
                    .contains("earth");
        }

        @Test
        void nothing_to_coat_is_said() {
            Report sheet = sheet(order("BL-1").notCoated(SampleShop.part("SC-1", null)));
            assertThat(text(sheet)).contains("Nothing in these orders is coated.");
        }

        @Test
        void several_orders_are_one_workbook_that_names_them() {
            assertThat(sheet(
                                    order("BL-2", "2026-06-20").with(1, PLAIN, OWN_BLACK),
                                    order("BL-1", "2026-06-30").with(1, PLAIN, OWN_BLACK))
                            .subject())
                    .isEqualTo("Orders BL-2, BL-1");
        }
    }

    @Nested
    class Overview {

        @Test
        @DisplayName("Batches and send-outs stand by the day of need; on one day what goes out comes first")
        void earliest_need_first() {
            String text = text(sheet(
                    order("BL-1", "2026-06-24").with(1, PLAIN, OWN_BLACK).with(1, MASKED, ZINC_BY_AREA),
                    order("BL-2", "2026-06-18").with(1, PLAIN, OWN_TWO_COAT)));
            assertThat(text.substring(text.indexOf("earliest need first")))
                    .containsSubsequence("Batch 1", "2026-06-12", "Send-out 3", "2026-06-18", "Batch 2", "2026-06-18");
        }
    }

    @Nested
    class Brackets {

        @Test
        void a_kept_one_says_so() {
            assertThat(text(sheet(order("BL-1").kept(1, PLAIN, OWN_BLACK)))).contains("kept on purpose");
        }

        @Test
        void a_needed_one_does_not() {
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, OWN_BLACK)))).doesNotContain("kept on purpose");
        }

        @Test
        void an_undecided_one_is_held_back_and_on_no_batch_page() {
            Report sheet = sheet(order("BL-1").undecided(1, PLAIN, OWN_BLACK));
            assertThat(sheet.pages()).extracting(Page::name).containsExactly("Overview", "On hold");
            assertThat(text(sheet)).contains("On hold: do not coat").contains("PL-1");
            assertThat(found(order("BL-1").undecided(1, PLAIN, OWN_BLACK))).containsExactly("check on hold: PL-1");
        }
    }

    @Nested
    class Masks {

        @Test
        @DisplayName("Three pieces with four M8 threads each: 12 masks")
        void counted() {
            assertThat(text(sheet(order("BL-1").with(3, MASKED, OWN_BLACK))))
                    .contains("Thread | M8 | Plug M8 | 12 | 12");
        }

        @Test
        void a_chased_thread_is_no_mask_but_a_remark() {
            String text = text(sheet(order("BL-1").with(3, MASKED, OWN_BLACK)));
            assertThat(text).contains("chase after coating: 2 × thread M10").doesNotContain("Thread | M10");
        }

        @Test
        void a_mask_that_is_not_held_is_told() {
            assertThat(text(sheet(order("BL-1").with(1, EARTHED, OWN_BLACK))))
                    .contains("none of that size is held: ask before spraying");
            assertThat(found(order("BL-1").with(1, EARTHED, OWN_BLACK)))
                    .contains("check mask not held: earth point 20 mm");
        }

        @Test
        void a_coater_that_fits_masks_needs_no_list_of_ours() {
            assertThat(text(sheet(order("BL-1").with(1, MASKED, ZINC_BY_AREA))))
                    .contains("The coater fits the masks")
                    .doesNotContain("Issued | Removed | Missing");
        }

        @Test
        void for_the_other_coater_we_lay_them_out() {
            assertThat(text(sheet(order("BL-1").with(1, MASKED, ZINC_BY_PIECE))))
                    .contains("We fit the masks")
                    .contains("Issued | Removed | Missing");
        }
    }

    @Nested
    class Cautions {

        @Test
        void powder_dust_is_warned_of_where_we_spray() {
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, OWN_BLACK)))).contains("Powder in air can explode");
        }

        @Test
        void but_not_where_all_is_sent_out() {
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, ZINC_BY_AREA))))
                    .doesNotContain("Powder in air can explode")
                    .contains("Caution: Edges can be sharp");
        }
    }

    @Nested
    class Oven {

        @Test
        void thin_beside_thick_gets_a_word() {
            Part thick = SampleShop.part("TH-1", SampleShop.sections("8", "8"));
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, OWN_BLACK).with(1, thick, OWN_BLACK))))
                    .contains("3 mm (PL-1) and 8 mm (TH-1) do not reach metal temperature together");
        }

        @Test
        void alike_sections_get_none() {
            assertThat(text(sheet(order("BL-1").with(2, PLAIN, OWN_BLACK))))
                    .doesNotContain("do not reach metal temperature together");
        }

        @Test
        void what_does_not_fit_is_listed_with_its_reason() {
            Part longRail = SampleShop.part("RA-1", SampleShop.coat("0.5", new EnvelopeMm(2100, 100, 100)));
            assertThat(text(sheet(order("BL-1").with(1, longRail, OWN_BLACK))))
                    .contains("Too large for the oven")
                    .contains("2100 × 100 × 100 mm does not go into");
            assertThat(found(order("BL-1").with(1, longRail, OWN_BLACK))).contains("check too large for oven: RA-1");
        }

        @Test
        void which_piece_hangs_in_which_load_is_told_where_there_are_two() {
            assertThat(text(sheet(order("BL-1").with(11, PLAIN, OWN_BLACK))))
                    .contains("at least 2 loads; planned: 2")
                    .contains("BL-1 1–10")
                    .contains("BL-1 11");
        }
    }

    @Nested
    class Film {

        @Test
        @DisplayName("One coat from 60 µm: mean 60, none under 48")
        void one_coat() {
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, OWN_BLACK))))
                    .contains("at least 60 µm and none is under 48 µm or over 120 µm");
        }

        @Test
        @DisplayName("Primer from 30 µm and topcoat from 60 µm are read together: mean 90, none under 72")
        void two_coats() {
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, OWN_TWO_COAT))))
                    .contains("at least 90 µm and none is under 72 µm or over 210 µm");
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource("boltlore.trades.coating.CoatSheetTest#gauges")
        @DisplayName("The gauge is named by the base metal")
        void gauge_by_base_metal(CheckRow row) {
            String[] methods = row.text("expected_decision").split("; ");
            assertThat(methods).hasSize(2);
            assertThat(text(sheet(order("BL-1").with(1, PLAIN, OWN_BLACK))))
                    .contains("on steel (" + methods[0].substring(methods[0].length() - "ISO 2178".length()) + ")")
                    .contains("on aluminium (" + methods[1].substring(methods[1].length() - "ISO 2360".length()) + ")");
        }

        @Test
        void earth_points_are_measured_where_there_are_some() {
            assertThat(text(sheet(order("BL-1").with(2, EARTHED, OWN_BLACK)))).contains("Resistance (Ω)");
        }

        @Test
        void without_earth_points_nothing_is_to_measure() {
            assertThat(text(sheet(order("BL-1").with(2, PLAIN, OWN_BLACK)))).doesNotContain("Resistance (Ω)");
        }
    }

    @Test
    void the_same_orders_in_another_order_are_the_same_sheet() {
        SampleOrders one = order("BL-1", "2026-06-20").with(2, PLAIN, OWN_BLACK);
        SampleOrders two = order("BL-2", "2026-06-20").with(3, PLAIN, OWN_BLACK);
        assertThat(sheet(one, two)).isEqualTo(sheet(two, one));
    }
}

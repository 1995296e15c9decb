package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Feature;
import java.util.List;
import org.junit.jupiter.api.Test;

class BareSpotsTest {

    private static Feature thread(String size, int count, Feature.Treat treat) {
        return new Feature(Feature.Kind.THREAD, size, count, treat);
    }

    private static List<BareSpots> spots(int pieces, Feature... features) {
        CoatingSpec coat = SampleShop.coat("0.1", features);
        return BareSpots.of(List.of(SampleOrders.row(SampleShop.part("P-1", coat), coat, pieces)));
    }

    @Test
    void masks_are_counted_for_all_pieces() {
        assertThat(spots(3, thread("M8", 4, Feature.Treat.MASKED)))
                .containsExactly(new BareSpots(Feature.Kind.THREAD, "M8", true, 12));
    }

    @Test
    void chased_threads_are_told_apart_from_masked_ones() {
        assertThat(spots(1, thread("M8", 4, Feature.Treat.MASKED), thread("M8", 2, Feature.Treat.CHASED)))
                .containsExactly(
                        new BareSpots(Feature.Kind.THREAD, "M8", true, 4),
                        new BareSpots(Feature.Kind.THREAD, "M8", false, 2));
    }

    @Test
    void sizes_stand_in_order_of_diameter() {
        assertThat(spots(
                        1,
                        thread("M10", 1, Feature.Treat.MASKED),
                        thread("M8", 1, Feature.Treat.MASKED),
                        thread("M6", 1, Feature.Treat.MASKED)))
                .extracting(BareSpots::size)
                .containsExactly("M6", "M8", "M10");
    }

    @Test
    void the_mask_of_that_size_is_found() {
        assertThat(new BareSpots(Feature.Kind.THREAD, "M8", true, 1).mask(SampleShop.SHOP))
                .hasValueSatisfying(mask -> assertThat(mask.name()).isEqualTo("plug-m8"));
    }

    @Test
    void a_mask_of_another_kind_does_not_do() {
        assertThat(new BareSpots(Feature.Kind.FACE, "M8", true, 1).mask(SampleShop.SHOP))
                .isEmpty();
    }

    @Test
    void a_part_without_bare_spots_needs_no_mask() {
        assertThat(spots(3)).isEmpty();
    }
}

package boltlore.trades.coating;

import static boltlore.trades.coating.SampleOrders.order;
import static boltlore.trades.coating.SampleShop.OWN_BLACK;
import static boltlore.trades.coating.SampleShop.ZINC_BY_AREA;
import static boltlore.trades.coating.SampleShop.ZINC_BY_PIECE;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Part;
import boltlore.findings.Finding;
import boltlore.trades.FoundBy;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What somebody must do before pieces are hung. The shop with costs names a coater for what is too large. */
class CoatingFindingsTest {

    private static final CoatingShop SHOP = SampleShop.costed("PB-BLACK", 0);
    private static final Part SMALL = SampleShop.part("SM-1", SampleShop.coat("0.2", new EnvelopeMm(200, 100, 50)));
    private static final Part RAIL = SampleShop.part("RA-1", SampleShop.coat("0.5", new EnvelopeMm(2100, 100, 100)));
    private static final Part EARTHED = SampleShop.part(
            "EA-1", SampleShop.coat("0.5", new Feature(Feature.Kind.EARTH, "20", 1, Feature.Treat.MASKED)));
    private static final Part PLUGGED = SampleShop.part(
            "TH-1", SampleShop.coat("0.5", new Feature(Feature.Kind.THREAD, "M8", 4, Feature.Treat.MASKED)));

    private static List<Finding> found(CoatingShop shop, @Nullable LocalDate start, SampleOrders... orders) {
        Catalogue catalogue = SampleOrders.catalogue(shop, Map.of(), OWN_BLACK, ZINC_BY_AREA, ZINC_BY_PIECE);
        CoatPlan plan =
                CoatPlanner.plan(Stream.of(orders).map(SampleOrders::bill).toList(), catalogue);
        return CoatingFindings.find(new CoatJob(plan, catalogue.workshop(), start, null, Again.NONE, List.of()))
                .all();
    }

    private static List<String> names(CoatingShop shop, SampleOrders... orders) {
        return found(shop, null, orders).stream().map(FoundBy::name).toList();
    }

    @Test
    @DisplayName("Pieces that fit, with masks that are held and powders whose lightness is known, show nothing")
    void nothing() {
        assertThat(names(SHOP, order("BL-1").with(2, SMALL, OWN_BLACK).with(1, PLUGGED, OWN_BLACK)))
                .isEmpty();
    }

    @Test
    @DisplayName("A bracket that nobody has decided about is told with its marks; one kept on purpose is not")
    void on_hold() {
        assertThat(found(SHOP, null, order("BL-1").undecided(2, SMALL, OWN_BLACK)))
                .extracting(Finding::says)
                .singleElement()
                .asString()
                .startsWith("2 pieces of SM-1, ")
                .endsWith("(BL-1 1–2).");
        assertThat(names(SHOP, order("BL-1").kept(2, SMALL, OWN_BLACK))).isEmpty();
    }

    @Test
    @DisplayName("An order cannot waive what is on hold: it is decided where the bracket is")
    void on_hold_is_not_waived() {
        assertThat(CoatingFinding.ON_HOLD.waivable()).isFalse();
        assertThat(CoatingFinding.MASK_NOT_HELD.waivable()).isTrue();
    }

    @Test
    @DisplayName("What is too large goes to the coater that is named and is noted; without one somebody decides")
    void too_large() {
        assertThat(names(SHOP, order("BL-1").with(1, RAIL, OWN_BLACK))).containsExactly("too large sent out: RA-1");
        assertThat(names(SampleShop.shop("PB-BLACK"), order("BL-1").with(1, RAIL, OWN_BLACK)))
                .containsExactly("too large for oven: RA-1");
    }

    @Test
    @DisplayName("A mask that we fit and do not hold is told for the own oven and for a coater who fits none")
    void masks() {
        assertThat(names(SHOP, order("BL-1").with(1, EARTHED, OWN_BLACK)))
                .containsExactly("mask not held: earth point 20 mm");
        assertThat(names(SHOP, order("BL-1").with(1, EARTHED, ZINC_BY_PIECE)))
                .containsExactly("mask not held: earth point 20 mm");
        assertThat(names(SHOP, order("BL-1").with(1, EARTHED, ZINC_BY_AREA))).isEmpty();
    }

    @Test
    @DisplayName("A piece without a size is measured before it is hung")
    void sizes() {
        Part unsized = SampleShop.part("UN-1", SampleShop.coat("0.2", (EnvelopeMm) null));
        assertThat(names(SHOP, order("BL-1").with(1, unsized, OWN_BLACK))).containsExactly("size not known: UN-1");
        assertThat(names(SHOP, order("BL-1").with(1, unsized, ZINC_BY_AREA))).isEmpty();
    }

    @Test
    @DisplayName(
            "Needed six days before it is due on 22 June: coated on Tuesday 16 it is in time, on Wednesday it is late")
    void late() {
        SampleOrders order = order("BL-1", "2026-06-22").with(1, SMALL, OWN_BLACK);
        assertThat(found(SHOP, LocalDate.of(2026, 6, 16), order)).isEmpty();
        assertThat(found(SHOP, LocalDate.of(2026, 6, 17), order))
                .extracting(Finding::says)
                .containsExactly("BL-1 needs its pieces by 2026-06-16 and has them coated on 2026-06-17: tell sales.");
        assertThat(found(SHOP, null, order)).isEmpty();
    }

    @Test
    @DisplayName("A powder whose lightness nobody has given is noted")
    void lightness() {
        assertThat(names(SampleShop.shop("PB-BLACK"), order("BL-1").with(1, SMALL, OWN_BLACK)))
                .containsExactly("lightness not known: PB-BLACK");
    }
}

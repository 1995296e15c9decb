package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.proof.Altered;
import boltlore.resolution.Resolver;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("The best complete kits of the van")
class BestKitsTest {

    private static final BigDecimal HAIR = new BigDecimal("0.000001");

    /** Leaves 96 completions, few enough to build every kit. */
    private static final Choices MOSTLY_SETTLED = Van.choices(
            "body-era=late",
            "drive-side=left",
            "market=europe",
            "supply=three-phase-16",
            "language=en",
            "export=none",
            "battery=two-strings");

    private static final Enumerated EVERY_KIT = Enumerated.of(Van.RESOLVER, MOSTLY_SETTLED);

    private final BestKits best = new BestKits(Van.RESOLVER, Van.FAMILY, Deadline.NONE);

    private BestKit best(Aim aim) {
        return best.best(aim, MOSTLY_SETTLED).orElseThrow();
    }

    @Test
    void the_cheapest_is_that_of_building_every_kit() {
        assertThat(best(Aim.CHEAPEST).sum()).isCloseTo(EVERY_KIT.leastCost(), offset(HAIR));
    }

    @Test
    void the_dearest_is_that_of_building_every_kit() {
        assertThat(best(Aim.DEAREST).sum()).isCloseTo(EVERY_KIT.mostCost(), offset(HAIR));
    }

    @Test
    void the_lightest_is_that_of_building_every_kit() {
        assertThat(best(Aim.LIGHTEST).sum()).isCloseTo(EVERY_KIT.leastMassKg(), offset(HAIR));
    }

    @Test
    void the_soonest_is_that_of_building_every_kit_and_of_those_the_cheapest() {
        assertThat(best(Aim.SOONEST).leadDays()).isEqualTo(EVERY_KIT.leastDays());
        assertThat(best(Aim.SOONEST).sum()).isCloseTo(EVERY_KIT.leastCostOfSoonest(), offset(HAIR));
    }

    @Test
    void each_costs_what_its_own_bill_adds_up() {
        for (Aim aim : new Aim[] {Aim.CHEAPEST, Aim.DEAREST, Aim.SOONEST}) {
            BestKit kit = best.best(aim, Van.choices()).orElseThrow();
            assertThat(Enumerated.cost(kit.pricing())).isCloseTo(kit.sum(), offset(HAIR));
        }
    }

    @Test
    void each_keeps_what_has_been_chosen() {
        Choices chosen = Van.choices("market=united-kingdom", "air-conditioning=yes");

        Choices complete = best.best(Aim.CHEAPEST, chosen).orElseThrow().choices();

        assertThat(complete.settled()).isTrue();
        assertThat(Chooser.list(complete)).containsAll(Chooser.list(chosen));
    }

    @Test
    void what_is_as_good_is_told_and_the_usual_is_taken() {
        BestKit kit = best(Aim.LIGHTEST);

        assertThat(kit.choices().value(Van.choice("colour=black").option())).contains("black");
        assertThat(kit.ties().get(Van.choice("colour=black").option()))
                .extracting(value -> value.value())
                .containsExactly("grey", "green");
    }

    @Test
    void a_kit_with_a_finding_that_stops_it_is_passed_over() {
        Resolver loose = Van.WITHOUT_SOCKET_LIMIT;
        BestKits bestKits = new BestKits(loose, loose.catalogue().family("pannier-van"), Deadline.NONE);

        assertThat(bestKits.best(Aim.CHEAPEST, Van.choices("market=australia-new-zealand", "export=bs-1363")))
                .isEmpty();
        assertThat(bestKits.best(Aim.CHEAPEST, Van.choices("market=united-kingdom", "export=bs-1363")))
                .isPresent();
    }

    @Test
    void choices_that_no_order_keeps_have_no_best_kit() {
        assertThat(best.best(Aim.CHEAPEST, Van.choices("market=europe", "inlet=j3400")))
                .isEmpty();
    }

    @Test
    void asking_again_gives_the_same_answer() {
        BestKit first = best(Aim.CHEAPEST);
        best.best(Aim.DEAREST, Van.choices());

        assertThat(best(Aim.CHEAPEST).choices()).isEqualTo(first.choices());
        assertThat(best(Aim.CHEAPEST).sum()).isEqualTo(first.sum());
    }

    @Nested
    @DisplayName("for a partner abroad, with a coated extra as the kit is coated, and brackets left out")
    class Agreed {

        private final QuoteRequest asked = new QuoteRequest(LocalDate.of(2026, 6, 20), null, null);
        private final Order draft = draft();
        private final Enumerated every = Enumerated.of(Van.RESOLVER, draft, asked);
        private final BestKits best = new BestKits(Van.RESOLVER, draft, asked, Deadline.NONE);

        /** The colour is open, so the extra has as many prices as there are finishes. */
        private Order draft() {
            Extra mount = new Extra(
                    new PartNumber("PV-IM-L"),
                    "",
                    BigDecimal.TEN,
                    "each",
                    null,
                    null,
                    false,
                    "Spares for the partner.");
            return Altered.with(
                    Altered.with(
                            Order.draft(MOSTLY_SETTLED).withLeftOut(new LeftOut.AllUnused()), "extra", List.of(mount)),
                    "partner",
                    "Saltwood Flat Van Works");
        }

        @Test
        void the_price_is_the_lowest_and_the_highest_that_any_order_is_quoted() {
            assertThat(every.kits()).isNotEmpty();
            assertThat(best.best(Aim.CHEAPEST, MOSTLY_SETTLED).orElseThrow().price())
                    .contains(every.kits().stream()
                            .map(Enumerated.Built::price)
                            .min(Comparator.naturalOrder())
                            .orElseThrow());
            assertThat(best.best(Aim.DEAREST, MOSTLY_SETTLED).orElseThrow().price())
                    .contains(every.kits().stream()
                            .map(Enumerated.Built::price)
                            .max(Comparator.naturalOrder())
                            .orElseThrow());
        }

        @Test
        void the_lead_time_is_the_shortest_of_all() {
            assertThat(best.best(Aim.SOONEST, MOSTLY_SETTLED).orElseThrow().leadDays())
                    .isEqualTo(every.leastDays());
        }
    }
}

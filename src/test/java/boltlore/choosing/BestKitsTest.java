package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Costs;
import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Source;
import boltlore.choices.Choices;
import boltlore.choices.Completions;
import boltlore.coating.CoatingCost;
import boltlore.logic.Deadline;
import boltlore.pricing.PricedBill;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The best complete kits of the van")
class BestKitsTest {

    private static final BigDecimal HAIR = new BigDecimal("0.000001");

    /** Leaves 3 x 2 x 3 ... completions, few enough to build every kit. */
    private static final Choices MOSTLY_SETTLED = Van.choices(
            "body-era=late",
            "drive-side=left",
            "market=europe",
            "supply=three-phase-16",
            "language=en",
            "export=none",
            "battery=two-strings");

    private final BestKits best = new BestKits(Van.RESOLVER, Van.FAMILY, Deadline.NONE);

    private record Built(Choices choices, BigDecimal cost, BigDecimal massKg, int leadDays) {}

    private static List<Built> everyKit(Choices partial) {
        List<Built> all = new ArrayList<>();
        Completions.visit(partial, choices -> {
            TrialKit kit = TrialKit.of(Van.RESOLVER, choices);
            PricedBill bill = kit.bill();
            if (bill != null && kit.stops().isEmpty()) {
                all.add(new Built(choices, unrounded(bill), Masses.kitKg(bill.bill()), bill.leadDays()));
            }
            return true;
        });
        return all;
    }

    private static BigDecimal unrounded(PricedBill bill) {
        return bill.bill().items().stream().map(item -> coating(item)).reduce(Costs.kit(bill.bill()), BigDecimal::add);
    }

    private static BigDecimal coating(Item item) {
        Finish finish = Van.CATALOGUE.finishes().get(item.finish());
        BigDecimal own = finish == null
                ? BigDecimal.ZERO
                : CoatingCost.of(item, finish, Van.CATALOGUE.workshop().coating());
        return item.part().source() == Source.BUY
                ? own
                : item.inside().stream().map(BestKitsTest::coating).reduce(own, BigDecimal::add);
    }

    @Test
    void are_those_that_building_every_kit_finds() {
        List<Built> all = everyKit(MOSTLY_SETTLED);
        assertThat(best.best(Aim.CHEAPEST, MOSTLY_SETTLED).orElseThrow().sum())
                .isCloseTo(
                        all.stream().map(Built::cost).min(BigDecimal::compareTo).orElseThrow(),
                        org.assertj.core.data.Offset.offset(HAIR));
        assertThat(best.best(Aim.DEAREST, MOSTLY_SETTLED).orElseThrow().sum())
                .isCloseTo(
                        all.stream().map(Built::cost).max(BigDecimal::compareTo).orElseThrow(),
                        org.assertj.core.data.Offset.offset(HAIR));
        assertThat(best.best(Aim.LIGHTEST, MOSTLY_SETTLED).orElseThrow().sum())
                .isCloseTo(
                        all.stream()
                                .map(Built::massKg)
                                .min(BigDecimal::compareTo)
                                .orElseThrow(),
                        org.assertj.core.data.Offset.offset(HAIR));
        assertThat(best.best(Aim.SOONEST, MOSTLY_SETTLED).orElseThrow().leadDays())
                .isEqualTo(all.stream().mapToInt(Built::leadDays).min().orElseThrow());
    }
}

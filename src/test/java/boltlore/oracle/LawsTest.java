package boltlore.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.measure.PartNumber;
import boltlore.order.LeftOut;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trial.Trial;
import boltlore.trial.TrialLine;
import boltlore.trial.TrialPosition;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("On small catalogues drawn by chance")
class LawsTest {

    private static final List<LeftOut> DECISIONS = List.of(new LeftOut.Undecided(), new LeftOut.AllUnused());

    private static List<Choices> some(Catalogue catalogue) {
        return new Variants(catalogue.family(Trial.FAMILY)).spread(6);
    }

    @Property(tries = 100)
    @Label("resolving twice gives the same")
    void twice(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Resolver resolver = new RuleResolver(catalogue);
        for (Choices choices : some(catalogue)) {
            for (LeftOut leftOut : DECISIONS) {
                assertThat(resolver.resolve(choices, leftOut))
                        .isEqualTo(resolver.resolve(choices, leftOut))
                        .isEqualTo(new RuleResolver(catalogue).resolve(choices, leftOut));
            }
        }
    }

    @Property(tries = 150)
    @Label("the bill has the quantities of the kit, and costs and weighs what they sum to")
    void bill(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Resolver resolver = new RuleResolver(catalogue);
        Oracle oracle = new Oracle(catalogue);
        for (Choices choices : some(catalogue)) {
            for (LeftOut leftOut : DECISIONS) {
                Bill bill = Bills.of(resolver, choices, leftOut);
                PlainSums sums = oracle.sums(bill.resolved());

                assertThat(Agreement.plain(bill.quantities()))
                        .isEqualTo(Agreement.plain(bill.resolved().kit().quantities()));
                assertThat(Costs.kit(bill)).isEqualByComparingTo(sums.cost());
                assertThat(Masses.kitKg(bill)).isEqualByComparingTo(sums.massKg());
            }
        }
    }

    @Property(tries = 100)
    @Label("leaving out all unused brackets saves the difference of the two kits, and adds to nothing")
    void saving(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Resolver resolver = new RuleResolver(catalogue);
        Oracle oracle = new Oracle(catalogue);
        for (Choices choices : some(catalogue)) {
            Bill all = Bills.of(resolver, choices, new LeftOut.Keep());
            Bill without = Bills.of(resolver, choices, new LeftOut.AllUnused());
            Saving saving = Saving.between(all, without);
            PlainSums before = oracle.sums(oracle.resolve(choices, new LeftOut.Undecided()));
            PlainSums after = oracle.sums(oracle.resolve(choices, new LeftOut.AllUnused()));

            assertThat(saving.quantities().values()).allMatch(quantity -> quantity.signum() > 0);
            assertThat(saving.cost()).isEqualByComparingTo(before.cost().subtract(after.cost()));
            assertThat(saving.massKg()).isEqualByComparingTo(before.massKg().subtract(after.massKg()));
        }
    }

    @Property(tries = 150)
    @Label("a line without conditions at a place of its own never takes anything away")
    void oneLineMore(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Catalogue richer = withOneLineMore(catalogue, new Dice(seed));
        for (Choices choices : some(catalogue)) {
            Choices same = Choices.of(richer.family(Trial.FAMILY), choices.values());
            Bill before = Bills.of(new RuleResolver(catalogue), choices, new LeftOut.Undecided());
            Bill after = Bills.of(new RuleResolver(richer), same, new LeftOut.Undecided());

            assertThat(Costs.kit(after)).isGreaterThanOrEqualTo(Costs.kit(before));
            assertThat(Masses.kitKg(after)).isGreaterThanOrEqualTo(Masses.kitKg(before));
            SortedMap<PartNumber, BigDecimal> now = after.quantities();
            before.quantities()
                    .forEach((part, quantity) ->
                            assertThat(now.get(part)).as("quantity of %s", part).isGreaterThanOrEqualTo(quantity));
        }
    }

    private static Catalogue withOneLineMore(Catalogue catalogue, Dice dice) {
        Family family = catalogue.family(Trial.FAMILY);
        PartNumber part = dice.oneOf(List.copyOf(catalogue.parts().keySet()));
        List<Position> positions = new ArrayList<>(family.positions());
        positions.add(TrialPosition.position("one-more")
                .fill(Fill.FREE)
                .line(TrialLine.line("one-more", part.text()).quantity(dice.quantity()))
                .done());
        Family richer = new Family(
                family.name(),
                family.says(),
                family.donor(),
                family.options(),
                family.limits(),
                family.finishes(),
                family.pairs(),
                positions,
                family.companions());
        return new Catalogue(
                catalogue.workshop(),
                catalogue.finishes(),
                catalogue.materials(),
                catalogue.parts(),
                Map.of(family.name(), richer),
                "richer");
    }
}

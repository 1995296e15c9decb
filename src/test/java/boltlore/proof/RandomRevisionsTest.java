package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.choices.Choices;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.Truth;
import boltlore.measure.PartNumber;
import boltlore.oracle.Oracle;
import boltlore.oracle.RandomCatalogue;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.proof.revision.Case;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.Revisions;
import boltlore.trial.Trial;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("After an edit of a small catalogue drawn by chance")
class RandomRevisionsTest {

    @Property(tries = 200)
    @Label("the kits said to change are those that change when every order is looked at")
    void the_kits_that_change(@ForAll long seed) {
        Catalogue before = RandomCatalogue.draw(seed);
        Catalogue after = edited(before, new Random(seed));
        Revision revision = Revisions.compare(before, after, Trial.FAMILY, Deadline.NONE);

        List<Choices> both = new Variants(before.family(Trial.FAMILY))
                .all().stream().filter(order -> isValid(order, after)).toList();
        List<Choices> changed = both.stream()
                .filter(order -> !quantities(before, order).equals(quantities(after, order)))
                .toList();

        assertThat(revision.decided()).isTrue();
        assertThat(revision.both()).isEqualTo(exactly(both.size()));
        assertThat(revision.changed()).isEqualTo(exactly(changed.size()));
        revision.cases().ifPresent(cases -> sayExactly(cases, both, changed));
    }

    private static Count exactly(long orders) {
        return new Count.Exactly(BigInteger.valueOf(orders));
    }

    private static boolean isValid(Choices order, Catalogue catalogue) {
        Truth truth = new Truth(order);
        return catalogue.family(Trial.FAMILY).limits().stream()
                .map(Limit::forbids)
                .noneMatch(truth::of);
    }

    private static Map<PartNumber, BigDecimal> quantities(Catalogue catalogue, Choices order) {
        Map<PartNumber, BigDecimal> quantities = new HashMap<>();
        Choices own = Choices.of(catalogue.family(Trial.FAMILY), order.values());
        new Oracle(catalogue)
                .resolve(own, new LeftOut.Undecided())
                .kit()
                .quantities()
                .forEach((part, quantity) -> quantities.put(part, quantity.stripTrailingZeros()));
        return quantities;
    }

    /** Together the cases hold for the orders that change and for no other, and each is needed for one of them. */
    private static void sayExactly(List<Case> cases, List<Choices> both, List<Choices> changed) {
        assertThat(both.stream().filter(order -> some(cases, order))).containsExactlyElementsOf(changed);
        for (Case each : cases) {
            List<Case> others =
                    cases.stream().filter(other -> !other.equals(each)).toList();
            assertThat(changed).anyMatch(order -> !some(others, order));
        }
    }

    private static boolean some(List<Case> cases, Choices order) {
        return cases.stream().anyMatch(each -> new Truth(order).of(each.condition()));
    }

    /** A line takes an earlier line's condition, days among them, another one's quantity grows, and a limit goes. */
    private static Catalogue edited(Catalogue catalogue, Random chance) {
        Family family = catalogue.family(Trial.FAMILY);
        List<Line> lines = family.lines().toList();
        int changed = chance.nextInt(lines.size());
        Line earlier = lines.get(chance.nextInt(changed + 1));
        Line first = Altered.with(
                Altered.with(lines.get(changed), "when", earlier.when()), "effectivity", earlier.effectivity());
        Line second = lines.get(chance.nextInt(lines.size()));
        List<Line> edits = new ArrayList<>(List.of(first));
        if (!second.name().equals(first.name())) {
            edits.add(Altered.with(second, "quantity", second.quantity().add(BigDecimal.ONE)));
        }
        List<Limit> limits = new ArrayList<>(family.limits());
        if (!limits.isEmpty()) {
            limits.remove(chance.nextInt(limits.size()));
        }
        Family other = Altered.with(
                Altered.with(family, "limits", limits),
                "positions",
                family.positions().stream()
                        .map(position -> with(position, edits))
                        .toList());
        return Altered.with(catalogue, "families", Map.of(Trial.FAMILY, other));
    }

    private static Position with(Position position, List<Line> edits) {
        return Altered.with(
                position,
                "lines",
                position.lines().stream()
                        .map(line -> edits.stream()
                                .filter(edit -> edit.name().equals(line.name()))
                                .findFirst()
                                .orElse(line))
                        .toList());
    }
}

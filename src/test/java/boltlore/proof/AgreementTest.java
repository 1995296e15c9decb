package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.order.LeftOut;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The rules resolve one order; the formulas speak of all. On variants of the demo families, drawn from all of them, they
 * say the same; on every one with {@code -Dboltlore.variants=100000}, which takes minutes.
 */
@Tag("slow")
class AgreementTest {

    private static final int MOST_VARIANTS = Integer.getInteger("boltlore.variants", 1000);
    private static final long SEED = Long.getLong("boltlore.seed", 1);

    private static final Catalogue CATALOGUE = DemoFamily.catalogue();
    private static final Resolver RULES = new RuleResolver(CATALOGUE);

    static List<String> families() {
        return List.copyOf(CATALOGUE.families().keySet());
    }

    @ParameterizedTest
    @MethodSource("families")
    @DisplayName("with nothing left out")
    void with_nothing_left_out(String family) {
        agree(CATALOGUE.family(family), false);
    }

    @ParameterizedTest
    @MethodSource("families")
    @DisplayName("with every unused bracket left out")
    void with_every_unused_bracket_left_out(String family) {
        agree(CATALOGUE.family(family), true);
    }

    private static void agree(Family family, boolean unusedLeftOut) {
        SaidOfKits formulas =
                new SaidOfKits(KitView.of(CATALOGUE, family, unusedLeftOut, Deadline.NONE), unusedLeftOut);
        assertThat(formulas.isWhole()).isTrue();
        LeftOut leftOut = unusedLeftOut ? new LeftOut.AllUnused() : new LeftOut.Undecided();
        List<Choices> variants = new ArrayList<>(PlainVariants.list(family).orElseThrow());
        Collections.shuffle(variants, new Random(SEED));
        List<Choices> orders = variants.stream()
                .limit(MOST_VARIANTS)
                .map(AgreementTest::withAnyFree)
                .toList();
        List<Said> byRules =
                orders.parallelStream().map(order -> byRules(order, leftOut)).toList();

        assertThat(orders).isNotEmpty();
        for (int i = 0; i < orders.size(); i++) {
            assertThat(formulas.of(orders.get(i))).as("%s", orders.get(i)).isEqualTo(byRules.get(i));
        }
    }

    /** Free options take their first value: by definition they decide nothing. */
    private static Choices withAnyFree(Choices variant) {
        Choices whole = variant;
        for (Option free : variant.unsettled()) {
            whole = whole.with(free.name(), free.values().get(0).value());
        }
        return whole;
    }

    private static Said byRules(Choices order, LeftOut leftOut) {
        Outcome<Resolution> outcome = RULES.resolve(order, leftOut);
        if (outcome instanceof Outcome.Sound<Resolution> sound
                && sound.value() instanceof Resolution.Resolved resolved) {
            return Said.byRules(resolved);
        }
        throw new AssertionError("The rules do not resolve " + order + ": " + outcome);
    }
}

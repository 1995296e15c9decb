package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.Part;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.oracle.Agreement;
import boltlore.oracle.RandomCatalogue;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.trial.Trial;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Rules, formulas and the plain reading on as many catalogues drawn by chance as one has time for:
 *
 * <pre>mvn -q test -Dtest=ManyCataloguesTest -Dboltlore.catalogues=3000</pre>
 *
 * {@code -Dboltlore.minutes=30} ends after so long and says how many it has done. The seeds are 0, 1, 2 …, so that a catalogue on which they differ can be drawn again.
 */
@DisplayName("On catalogues drawn by chance, one after the other")
class ManyCataloguesTest {

    private static final int CATALOGUES = Integer.getInteger("boltlore.catalogues", 20);
    private static final long MINUTES = Long.getLong("boltlore.minutes", 600);
    private static final int ORDERS_EACH = 30;

    private int orders;
    private int withGroups;
    private int withDates;
    private int withReused;
    private int notWhole;

    @Test
    @DisplayName("rules, formulas and the plain reading say the same of every order")
    void all_say_the_same() {
        Instant begun = Instant.now();
        Instant until = begun.plus(Duration.ofMinutes(MINUTES));
        long seed = 0;
        for (; seed < CATALOGUES && Instant.now().isBefore(until); seed++) {
            look(seed);
        }
        System.out.printf(
                "%d catalogues (%d with several-of-many, %d with effectivity, %d with reused parts; %d whose formulas grow too"
                        + " large), %d orders, each with unused brackets in and left out: all agree, in %d s%n",
                seed,
                withGroups,
                withDates,
                withReused,
                notWhole,
                orders,
                Duration.between(begun, Instant.now()).toSeconds());
        assertThat(List.of(withGroups, withDates, withReused)).allMatch(some -> some > 0);
        assertThat(notWhole).isLessThan((int) seed / 4);
    }

    private void look(long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Family family = catalogue.family(Trial.FAMILY);
        count(catalogue, family);
        SaidOfKits kept = new SaidOfKits(KitView.of(catalogue, family, false, Deadline.NONE), false);
        SaidOfKits leftOut = new SaidOfKits(KitView.of(catalogue, family, true, Deadline.NONE), true);
        boolean whole = kept.isWhole() && leftOut.isWhole();
        notWhole += whole ? 0 : 1;
        Agreement agreement = new Agreement(catalogue);
        for (Choices order : new Variants(family).spread(ORDERS_EACH)) {
            orders++;
            Said inKit = Said.byRules(agreement.on(order, new LeftOut.Undecided()));
            Said withoutUnused = Said.byRules(agreement.on(order, new LeftOut.AllUnused()));
            if (whole) {
                assertThat(kept.of(order)).as("seed %d, %s", seed, order).isEqualTo(inKit);
                assertThat(leftOut.of(order)).as("seed %d, %s", seed, order).isEqualTo(withoutUnused);
            }
        }
    }

    private void count(Catalogue catalogue, Family family) {
        withGroups += family.options().stream().map(Option::group).anyMatch(group -> group != null) ? 1 : 0;
        List<EffectivityScale> scales = family.scales();
        boolean dated = family.lines().anyMatch(line -> !line.effectivity().isAlways());
        withDates += !scales.isEmpty() && dated ? 1 : 0;
        withReused += catalogue.parts().values().stream().anyMatch(Part::reused) ? 1 : 0;
    }
}

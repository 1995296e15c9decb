package boltlore.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.order.LeftOut;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Resolution;
import boltlore.resolution.Way;
import boltlore.trial.Trial;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What chance draws is worth comparing: nothing that can be found stays unfound. */
class RandomCatalogueTest {

    /** Found before there is a kit, or said of the order and not of its kit. */
    private static final Set<FindingKind> NOT_OF_A_KIT = EnumSet.of(
            FindingKind.CONFLICT,
            FindingKind.INCOMPLETE,
            FindingKind.ERA_AGAINST_BUILD_DATE,
            FindingKind.USUAL_TAKEN,
            FindingKind.WAIVED,
            FindingKind.EXTRA);

    private static final List<LeftOut> DECISIONS =
            List.of(new LeftOut.Undecided(), new LeftOut.Keep(), new LeftOut.AllUnused());

    private static final Set<FindingKind> KINDS = EnumSet.noneOf(FindingKind.class);
    private static final Set<Way> WAYS = EnumSet.noneOf(Way.class);
    private static int coated;
    private static int cautioned;

    @BeforeAll
    static void draw() {
        for (long seed = 0; seed < 600; seed++) {
            Catalogue catalogue = RandomCatalogue.draw(seed);
            Oracle oracle = new Oracle(catalogue);
            for (Choices choices : new Variants(catalogue.family(Trial.FAMILY)).spread(6)) {
                DECISIONS.forEach(leftOut -> look(oracle.resolve(choices, leftOut)));
            }
        }
    }

    private static void look(Resolution.Resolved resolved) {
        resolved.findings().stream().map(Finding::kind).forEach(KINDS::add);
        resolved.kit().reasons().forEach(reason -> WAYS.add(reason.way()));
        coated += resolved.kit().finishes().size();
        cautioned += resolved.kit().cautions().size();
    }

    @Test
    void every_kind_of_finding_about_a_kit_is_drawn() {
        Set<FindingKind> wanted = EnumSet.complementOf(EnumSet.copyOf(NOT_OF_A_KIT));

        assertThat(KINDS).containsAll(wanted);
    }

    @Test
    void parts_come_in_every_way_and_are_coated_and_cautioned() {
        assertThat(WAYS).containsExactlyInAnyOrder(Way.values());
        assertThat(coated).isPositive();
        assertThat(cautioned).isPositive();
    }

    @Test
    void the_same_seed_draws_the_same() {
        assertThat(RandomCatalogue.draw(42)).isEqualTo(RandomCatalogue.draw(42));
    }
}

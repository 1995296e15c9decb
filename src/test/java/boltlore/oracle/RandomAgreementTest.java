package boltlore.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.measure.LineName;
import boltlore.order.LeftOut;
import boltlore.trial.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("On small catalogues drawn by chance")
class RandomAgreementTest {

    @Property(tries = 100)
    @Label("rules and oracle resolve every order alike, with unused brackets kept and left out")
    void every_order_alike(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Agreement agreement = new Agreement(catalogue);

        new Variants(catalogue.family(Trial.FAMILY)).spread(200).forEach(agreement::on);
    }

    @Property(tries = 60)
    @Label("rules and oracle resolve alike when some unused brackets are left out and the others kept")
    void some_left_out(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Agreement agreement = new Agreement(catalogue);
        Oracle oracle = new Oracle(catalogue);
        Dice dice = new Dice(seed);
        for (Choices choices : new Variants(catalogue.family(Trial.FAMILY)).spread(20)) {
            SortedSet<LineName> these = new TreeSet<>(oracle.unused(choices));
            these.removeIf(line -> dice.once(2));
            agreement.on(choices, new LeftOut.These(these));
            agreement.on(choices, new LeftOut.Keep());
        }
    }

    @Property(tries = 150)
    @Label("the valid choices are the same by plain counting and by completing an empty order")
    void valid_choices(@ForAll long seed) {
        Family family = RandomCatalogue.draw(seed).family(Trial.FAMILY);
        List<Choices> completed = new ArrayList<>();
        Completions.visit(Choices.of(family, Map.of()), completed::add);

        assertThat(completed).containsExactlyInAnyOrderElementsOf(new Variants(family).all());
    }
}

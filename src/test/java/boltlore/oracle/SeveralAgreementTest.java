package boltlore.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.demo.Barrow;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Rules and oracle on a question that takes several answers")
class SeveralAgreementTest {

    @TempDir
    private Path folder;

    private Catalogue catalogue;
    private Family family;

    @BeforeEach
    void read() {
        Barrow.write(folder);
        catalogue = WorkedExample.sound(CatalogueReader.read(folder));
        family = catalogue.family("tin-barrow");
    }

    /** Motor and lamp allow 3 of 4 pairs; of the 8 sets of three extras 2 hold both tray and flag. */
    @Test
    void agree_in_each_of_its_orders_and_there_are_as_many_as_sets() {
        Agreement agreement = new Agreement(catalogue);
        List<Choices> all = new Variants(family).spread(1000);

        assertThat(all).hasSize(3 * 6);
        all.forEach(agreement::on);
    }

    @Test
    void each_answer_is_an_option_of_its_own() {
        assertThat(family.inGroup(new OptionName("extras")))
                .extracting(option -> option.name() + " " + option.valueNames())
                .containsExactly("extras-bell [yes, no]", "extras-flag [yes, no]", "extras-tray [yes, no]");
        assertThat(family.inGroup(new OptionName("lamp"))).isEmpty();
    }

    @Test
    void no_order_has_what_a_limit_on_two_answers_forbids() {
        ValidOrders orders = new ValidOrders(family, family.limits(), Deadline.NONE);
        Condition tray = is("extras-tray");

        assertThat(orders.some(tray, is("extras-flag"))).isFalse();
        assertThat(orders.some(tray, new Condition.Not(is("extras-flag")))).isTrue();
    }

    private static Condition is(String option) {
        return new Condition.Is(new OptionName(option), new TreeSet<>(List.of("yes")));
    }
}

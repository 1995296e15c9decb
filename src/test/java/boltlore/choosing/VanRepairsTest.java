package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.resolution.Resolver;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What would open a value for the van")
class VanRepairsTest {

    private static final Choices ORDER = Van.choices(
            "body-era=middle",
            "drive-side=left",
            "drive-unit=60-kw",
            "battery=one-string",
            "market=europe",
            "inlet=type-2",
            "charger=seven",
            "supply=one-phase-32",
            "export=none",
            "air-conditioning=no",
            "heater=water",
            "language=de",
            "colour=grey",
            "cover-colour=cream");

    private final Chooser chooser = new Chooser(Van.FAMILY);
    private final BestKits best = new BestKits(Van.RESOLVER, Van.FAMILY, Deadline.NONE);
    private final Repairer repairer = new Repairer(chooser, best);

    private List<Repair> repairs(Choices choices, String wanted) {
        Opening opening = repairer.opening(choices, Van.choice(wanted), Importance.NONE);
        return ((Opening.Repairs) opening).repairs();
    }

    @Test
    void a_v2l_outlet_needs_a_bidirectional_charger_and_the_cheaper_one_is_taken() {
        List<Repair> repairs = repairs(ORDER, "export=cee-7-3");

        assertThat(repairs).hasSize(1);
        assertThat(repairs.get(0).givenUp()).containsExactly(Van.choice("charger=seven"));
        assertThat(repairs.get(0).taken()).containsExactly(Van.choice("charger=seven-two-way"));
        assertThat(repairs.get(0).alternatives().get(new OptionName("charger")))
                .extracting(value -> value.value())
                .containsExactly("eleven-two-way");
    }

    @Test
    void the_difference_in_price_is_that_of_the_two_quotations() {
        Repair repair = repairs(ORDER, "export=cee-7-3").get(0);

        TrialKit before = trial(ORDER);
        TrialKit after = trial(repair.choices());

        assertThat(repair.choices().settled()).isTrue();
        assertThat(after.stops()).isEmpty();
        assertThat(repair.morePrice().orElseThrow())
                .isEqualByComparingTo(price(after).subtract(price(before)));
        assertThat(repair.moreLeadDays())
                .isEqualTo(after.pricing().leadDays() - before.pricing().leadDays());
    }

    private static TrialKit trial(Choices choices) {
        return TrialKit.of(Van.RESOLVER, Order.draft(choices), new QuoteRequest(LocalDate.EPOCH, null, null));
    }

    private static BigDecimal price(TrialKit kit) {
        return kit.pricing().quotation().orElseThrow().net();
    }

    @Test
    void an_exchange_that_nothing_stands_against_needs_no_repair() {
        assertThat(repairer.opening(ORDER, Van.choice("heater=air"), Importance.NONE))
                .isInstanceOf(Opening.AlreadyOpen.class);
    }

    @Test
    void firm_choices_that_stand_against_it_are_named() {
        Importance marketFirm = new Importance(Set.of(new OptionName("market")), List.of());

        Opening opening = repairer.opening(ORDER, Van.choice("inlet=j3400"), marketFirm);

        assertThat(((Opening.Impossible) opening).conflict().choices()).containsExactly(Van.choice("market=europe"));
    }

    @Test
    void a_firm_choice_is_not_exchanged_for_another_value() {
        Importance inletFirm = new Importance(Set.of(new OptionName("inlet")), List.of());

        Opening opening = repairer.opening(ORDER, Van.choice("inlet=type-1"), inletFirm);

        assertThat(((Opening.Impossible) opening).conflict())
                .isEqualTo(new Conflict(List.of(Van.choice("inlet=type-2")), List.of()));
    }

    @Test
    void firm_choices_that_contradict_each_other_cannot_be_mended() {
        Choices choices = Van.choices("market=europe", "inlet=j3400", "heater=water");
        Importance both = new Importance(Set.of(new OptionName("market"), new OptionName("inlet")), List.of());

        Opening opening = repairer.mending(choices, both);

        List<Choice> named = ((Opening.Impossible) opening).conflict().choices();
        assertThat(named).containsExactly(Van.choice("market=europe"), Van.choice("inlet=j3400"));
    }

    @Test
    void choices_that_contradict_each_other_are_mended_with_fewest_changes_first() {
        Choices choices = Van.choices("market=europe", "inlet=j3400", "drive-side=right");

        List<Repair> repairs = ((Opening.Repairs) repairer.mending(choices, Importance.NONE)).repairs();

        assertThat(repairs.get(0).givenUp()).containsExactly(Van.choice("inlet=j3400"));
        assertThat(repairs).allMatch(repair -> repair.before() == null);
        assertThat(repairs.get(1).givenUp())
                .containsExactly(Van.choice("drive-side=right"), Van.choice("market=europe"));
    }

    @Test
    void a_value_whose_every_kit_is_stopped_by_a_finding_is_not_offered() {
        Resolver loose = Van.WITHOUT_SOCKET_LIMIT;
        Family family = loose.catalogue().family("pannier-van");
        Repairer other = new Repairer(new Chooser(family), new BestKits(loose, family, Deadline.NONE));
        Choices choices = Van.choices("market=united-kingdom", "charger=seven-two-way", "export=bs-1363");

        Opening opening = other.opening(
                choices,
                Van.choice("market=australia-new-zealand"),
                new Importance(Set.of(new OptionName("export"), new OptionName("charger")), List.of()));

        assertThat(opening).isInstanceOfAny(Opening.Stopped.class, Opening.AlreadyOpen.class);
    }
}

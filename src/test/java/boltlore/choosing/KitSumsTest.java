package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.demo.Demo;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.PartConditions;
import boltlore.logic.Term;
import boltlore.order.Order;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is searched with against what is quoted, for orders drawn from all that are valid. */
@DisplayName("The sums that best kits are searched with")
class KitSumsTest {

    private static final int DRAWN = 40;

    private final Catalogue catalogue = Demo.catalogue();
    private final Resolver resolver = new RuleResolver(catalogue);
    private final Random random = new Random(20_261_130);

    @ParameterizedTest
    @ValueSource(strings = {"pannier-van", "stook-pickup"})
    void are_the_full_cost_to_the_cent_and_the_lead_time_to_the_day_of_any_order(String name) {
        Family family = catalogue.family(name);
        KitConditions kit = new KitConditions(catalogue, family, false);
        PartConditions parts = new PartConditions(kit);
        List<Term> cost = new KitSums(kit, parts, family, Deadline.NONE).cost();
        SortedMap<Integer, boltlore.catalogue.Condition> waits = LeadChains.list(parts, family, List.of());
        for (Choices choices : drawn(family)) {
            OrderPricing pricing = TrialKit.of(
                            resolver, Order.draft(choices), new QuoteRequest(LocalDate.EPOCH, null, null))
                    .pricing();

            assertThat(sum(cost, choices)).as(choices.toString()).isEqualByComparingTo(Enumerated.cost(pricing));
            assertThat(days(waits, choices)).isEqualTo(pricing.leadDays());
        }
    }

    private static BigDecimal sum(List<Term> terms, Choices choices) {
        return terms.stream()
                .filter(term -> Conditions.holds(term.when(), choices))
                .map(Term::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static int days(SortedMap<Integer, boltlore.catalogue.Condition> waits, Choices choices) {
        return waits.entrySet().stream()
                .filter(chain -> Conditions.holds(chain.getValue(), choices))
                .mapToInt(Map.Entry::getKey)
                .max()
                .orElseThrow();
    }

    /** Valid orders, each question answered at random among what is open. */
    private List<Choices> drawn(Family family) {
        List<Choices> all = new ArrayList<>();
        Chooser chooser = new Chooser(family);
        for (int i = 0; i < DRAWN; i++) {
            ChoiceState.Sound sound = (ChoiceState.Sound) chooser.standing(Choices.of(family, Map.of()));
            while (!sound.withForced().settled()) {
                var question =
                        sound.questions().get(random.nextInt(sound.questions().size()));
                var open = sound.open(question);
                sound = (ChoiceState.Sound) chooser.standing(sound.choices()
                        .with(
                                question.name(),
                                open.get(random.nextInt(open.size())).value()));
            }
            all.add(sound.withForced());
        }
        return all;
    }
}

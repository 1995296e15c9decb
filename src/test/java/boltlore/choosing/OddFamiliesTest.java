package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Count;
import boltlore.logic.OrderCounter;
import boltlore.measure.OptionName;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Choosing in odd families")
class OddFamiliesTest {

    private static final List<Option> TWO = List.of(SmallFamilies.option("a", 2), SmallFamilies.option("b", 2));

    private static Condition is(String option, String value) {
        return new Condition.Is(new OptionName(option), new TreeSet<>(Set.of(value)));
    }

    private static Limit never(String name, Condition forbidden) {
        return new Limit(name, "Because of " + name + ".", null, forbidden, null);
    }

    private static Choices none(Family family) {
        return Choices.of(family, Map.of());
    }

    @Test
    void a_family_without_a_valid_order_is_told_by_few_of_its_limits_alone() {
        Limit never = never("never-v0", is("a", "v0"));
        Limit nor = never("never-v1", is("a", "v1"));
        Family family = SmallFamilies.family(TWO, List.of(never("bystander", is("b", "v0")), never, nor));
        Chooser chooser = new Chooser(family);

        assertThat(chooser.standing(none(family))).isInstanceOf(ChoiceState.Contradicted.class);
        assertThat(chooser.conflict(none(family), Importance.NONE))
                .isEqualTo(new Conflict(List.of(), List.of(never, nor)));
        assertThat(new ConflictWords(family).contradiction(chooser.conflict(none(family), Importance.NONE)))
                .isEqualTo("No order of this family is valid. Because of never-v0. Because of never-v1.");
    }

    @Test
    void a_family_without_an_option_has_one_order() {
        Family family = SmallFamilies.family(List.of(), List.of());

        ChoiceState.Sound standing = (ChoiceState.Sound) new Chooser(family).standing(none(family));

        assertThat(standing.questions()).isEmpty();
        assertThat(new OrderCounter(family).all()).isEqualTo(new Count.Exactly(BigInteger.ONE));
    }

    @Test
    void a_family_with_one_option_of_one_value_is_settled_at_once() {
        Family family = SmallFamilies.family(List.of(SmallFamilies.option("a", 1)), List.of());

        ChoiceState.Sound standing = (ChoiceState.Sound) new Chooser(family).standing(none(family));

        assertThat(standing.questions()).isEmpty();
        assertThat(standing.withForced().settled()).isTrue();
        assertThat(new Interview(new Chooser(family), standing).question()).isEmpty();
    }

    @Test
    @DisplayName("ten thousand values of one option are told apart only where limits do")
    void ten_thousand_values() {
        Option many = SmallFamilies.option("many", 10_000);
        Option few = SmallFamilies.option("few", 2);
        TreeSet<String> some = new TreeSet<>(List.of("v17", "v9999"));
        Condition both = new Condition.All(List.of(is("few", "v0"), new Condition.Is(many.name(), some)));
        Family family = SmallFamilies.family(List.of(many, few), List.of(never("some", both)));
        Chooser chooser = new Chooser(family);

        ChoiceState.Sound standing =
                (ChoiceState.Sound) chooser.standing(none(family).with(few.name(), "v0"));

        assertThat(standing.open(many)).hasSize(9_998);
        assertThat(standing.closed(many).stream().map(value -> value.value())).containsExactly("v17", "v9999");
        assertThat(chooser.whyClosed(standing.choices(), new Choice(many.name(), "v17"), Importance.NONE)
                        .choices())
                .containsExactly(new Choice(few.name(), "v0"));
        assertThat(new OrderCounter(family).all()).isEqualTo(new Count.Exactly(BigInteger.valueOf(19_998)));
    }

    @Test
    void a_conflict_prefers_the_choices_that_mean_least() {
        List<Option> options =
                List.of(SmallFamilies.option("a", 2), SmallFamilies.option("b", 2), SmallFamilies.option("c", 2));
        Condition wanted = is("c", "v1");
        Family family = SmallFamilies.family(
                options,
                List.of(
                        never("with-a", new Condition.All(List.of(wanted, is("a", "v0")))),
                        never("with-b", new Condition.All(List.of(wanted, is("b", "v0"))))));
        Choices choices = none(family)
                .with(options.get(0).name(), "v0")
                .with(options.get(1).name(), "v0");
        Choice closed = new Choice(options.get(2).name(), "v1");
        Chooser chooser = new Chooser(family);

        Conflict aMeansMore = chooser.whyClosed(choices, closed, importance(Set.of(), "a", "b"));
        Conflict bMeansMore = chooser.whyClosed(choices, closed, importance(Set.of(), "b", "a"));
        Conflict bIsFirm = chooser.whyClosed(choices, closed, importance(Set.of("b"), "a"));

        assertThat(options(aMeansMore)).containsExactly("b");
        assertThat(options(bMeansMore)).containsExactly("a");
        assertThat(options(bIsFirm)).containsExactly("a");
        assertThat(chooser.allConflicts(choices, List.of(closed), Importance.NONE)
                        .conflicts())
                .hasSize(2);
    }

    private static Importance importance(Set<String> firm, String... rank) {
        List<OptionName> ranked = new ArrayList<>();
        for (String name : rank) {
            ranked.add(new OptionName(name));
        }
        return new Importance(firm.stream().map(OptionName::new).collect(Collectors.toSet()), ranked);
    }

    private static List<String> options(Conflict conflict) {
        return conflict.choices().stream().map(choice -> choice.option().text()).toList();
    }

    @Test
    @DisplayName("a count that outgrows its room says that it was given up, and is never wrong")
    void a_count_that_outgrows_its_room() {
        int size = 13;
        List<Option> rows = new ArrayList<>();
        List<Limit> limits = new ArrayList<>();
        for (int row = 0; row < size; row++) {
            rows.add(SmallFamilies.option("r" + row, size));
            for (int above = 0; above < row; above++) {
                for (int column = 0; column < size; column++) {
                    for (int step : new int[] {0, row - above, above - row}) {
                        if (column + step >= 0 && column + step < size) {
                            limits.add(never(
                                    "l" + limits.size(),
                                    new Condition.All(List.of(
                                            is("r" + above, "v" + column), is("r" + row, "v" + (column + step))))));
                        }
                    }
                }
            }
        }

        Count count = new OrderCounter(SmallFamilies.family(rows, limits)).all();

        assertThat(count).isInstanceOf(Count.GivenUp.class);
    }
}

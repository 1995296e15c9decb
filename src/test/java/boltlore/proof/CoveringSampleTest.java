package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Family;
import boltlore.checkvalues.CheckTable;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import boltlore.proof.sample.CoveringSample;
import boltlore.proof.sample.Sampler;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Covering samples against the plain meaning of the word: every combination that some valid order has is in one. */
class CoveringSampleTest {

    private static Family family(String name) {
        return DemoFamily.catalogue().families().containsKey(name)
                ? DemoFamily.catalogue().family(name)
                : WorkedFamilies.catalogue().family(name);
    }

    private static Set<Set<Choice>> combinations(List<Choices> orders, int ways) {
        Set<Set<Choice>> all = new HashSet<>();
        for (Choices order : orders) {
            List<Choice> choices = new ArrayList<>();
            order.values().forEach((option, value) -> choices.add(new Choice(option, value)));
            for (int i = 0; i < choices.size(); i++) {
                for (int j = i + 1; j < choices.size(); j++) {
                    if (ways == 2) {
                        all.add(Set.of(choices.get(i), choices.get(j)));
                    }
                    for (int k = j + 1; ways == 3 && k < choices.size(); k++) {
                        all.add(Set.of(choices.get(i), choices.get(j), choices.get(k)));
                    }
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"t-shirt,2", "t-shirt,3", "phone,2", "phone,3", "queens-5,2", "queens-6,3", "film-hole,2"})
    void all_combinations_that_trying_everything_finds_are_in_the_sample(String name, int ways) {
        Family family = family(name);
        CoveringSample sample = Sampler.draw(family, ways, Deadline.NONE).orElseThrow();
        List<Choices> all = PlainVariants.list(family).orElseThrow();

        assertThat(all).containsAll(sample.orders());
        assertThat(combinations(sample.orders(), ways)).isEqualTo(combinations(all, ways));
        assertThat(sample.coverable()).isEqualTo(combinations(all, ways).size());
        assertThat(sample.complete()).isTrue();
    }

    @Test
    @DisplayName("TS-14, TS-15: 19 of the shirt's 26 pairs can be built, and ten shirts show them, no fewer")
    void the_shirt() {
        CoveringSample sample =
                Sampler.draw(family("t-shirt"), 2, Deadline.NONE).orElseThrow();

        assertThat(CheckTable.rows("proof-examples.csv", "TS-14")
                        .findFirst()
                        .orElseThrow()
                        .text("expected"))
                .isEqualTo(sample.coverable() + " of "
                        + (sample.coverable() + sample.uncoverable().size()));
        assertThat(sample.orders())
                .hasSize(CheckTable.rows("proof-examples.csv", "TS-15")
                        .findFirst()
                        .orElseThrow()
                        .number("expected")
                        .intValueExact());
    }

    @Test
    @DisplayName("TS-16: of all sets of ten shirts two show every pair, and ours is one of them; no set of nine does")
    void the_smallest_samples_of_the_shirt() {
        List<Choices> all = PlainVariants.list(family("t-shirt")).orElseThrow();
        Set<Set<Choices>> smallest = subsets(all, 10);
        smallest.removeIf(some -> combinations(List.copyOf(some), 2).size() < 19);
        Set<Set<Choices>> smaller = subsets(all, 9);
        smaller.removeIf(some -> combinations(List.copyOf(some), 2).size() < 19);

        assertThat(smallest)
                .hasSize(CheckTable.rows("choosing-examples.csv", "TS-16")
                        .findFirst()
                        .orElseThrow()
                        .number("expected")
                        .intValueExact())
                .contains(Set.copyOf(Sampler.draw(family("t-shirt"), 2, Deadline.NONE)
                        .orElseThrow()
                        .orders()));
        assertThat(smaller).isEmpty();
    }

    private static Set<Set<Choices>> subsets(List<Choices> all, int size) {
        Set<Set<Choices>> subsets = new HashSet<>();
        for (int bits = 0; bits < 1 << all.size(); bits++) {
            if (Integer.bitCount(bits) == size) {
                Set<Choices> subset = new HashSet<>();
                for (int i = 0; i < all.size(); i++) {
                    if ((bits >> i & 1) == 1) {
                        subset.add(all.get(i));
                    }
                }
                subsets.add(subset);
            }
        }
        return subsets;
    }

    @ParameterizedTest
    @CsvSource({"pannier-van,2", "stook-pickup,2", "stook-pickup,3"})
    void a_demo_family_is_covered_by_few_of_its_orders(String name, int ways) {
        Family family = family(name);
        CoveringSample sample = Sampler.draw(family, ways, Deadline.NONE).orElseThrow();
        ValidOrders valid = new ValidOrders(family);

        assertThat(combinations(sample.orders(), ways)).hasSize((int) sample.coverable());
        assertThat(sample.orders()).hasSizeLessThan(150);
        assertThat(sample.uncoverable())
                .isNotEmpty()
                .allSatisfy(combination -> assertThat(valid.some(combination.stream()
                                .map(choice -> Says.is(choice.option().text(), choice.value()))
                                .toList()))
                        .isFalse());
    }

    @Test
    void three_at_a_time_is_refused_beyond_twenty_options() {
        Family large = GeneratedFamily.of(50, 21, 10, 1).family("van");

        assertThat(Sampler.draw(large, 3, Deadline.NONE)).isEmpty();
        assertThat(Sampler.draw(large, 2, Deadline.NONE)).isPresent();
    }

    @Test
    void a_family_without_a_valid_order_has_an_empty_sample() {
        CoveringSample sample =
                Sampler.draw(family("pigeons-3-2"), 2, Deadline.NONE).orElseThrow();

        assertThat(sample.orders()).isEmpty();
        assertThat(sample.coverable()).isZero();
    }
}

package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("An independent solver")
class IndependentJudgeProperties {

    @Property(tries = 200)
    void finds_the_same_minimal_conflicts_in_any_small_family(@ForAll long seed) {
        SmallFamilies small = new SmallFamilies(seed);
        Family family = small.family();
        Choices choices = small.choices(family);

        assertThat(ours(family, choices)).isEqualTo(Sat4jJudge.conflicts(family, Chooser.list(choices)));
    }

    @Property(tries = 25)
    void finds_the_same_minimal_conflicts_among_random_answers_for_the_van(@ForAll long seed) {
        Choices choices = new SmallFamilies(seed).choices(Van.FAMILY);

        assertThat(ours(Van.FAMILY, choices)).isEqualTo(Sat4jJudge.conflicts(Van.FAMILY, Chooser.list(choices)));
    }

    private static Set<Set<Choice>> ours(Family family, Choices choices) {
        List<Conflict> conflicts = new Chooser(family)
                .allConflicts(choices, List.of(), Importance.NONE)
                .conflicts();
        return conflicts.stream()
                .map(conflict -> Set.copyOf(conflict.choices()))
                .collect(Collectors.toSet());
    }
}

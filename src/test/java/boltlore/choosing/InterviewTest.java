package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The interview for a van")
class InterviewTest {

    private final Chooser chooser = new Chooser(Van.FAMILY);
    private final Interview interview = new Interview(chooser, (ChoiceState.Sound) chooser.standing(Van.choices()));

    @Test
    void ends_with_a_settled_order_whichever_open_answers_are_given() {
        int asked = 0;
        while (interview.question().isPresent()) {
            Option question = interview.question().orElseThrow();
            String last = interview
                    .standing()
                    .open(question)
                    .get(interview.standing().open(question).size() - 1)
                    .value();
            interview.answer(new Choice(question.name(), last));
            asked++;
        }

        assertThat(interview.standing().withForced().settled()).isTrue();
        assertThat(asked).isLessThan(Van.FAMILY.options().size());
    }

    @Test
    void asks_of_the_vehicle_first_then_what_settles_most_and_last_what_settles_nothing() {
        List<String> asked = new ArrayList<>();
        while (interview.question().isPresent()) {
            Option question = interview.question().orElseThrow();
            asked.add(question.name().text());
            interview.answer(new Choice(
                    question.name(), interview.standing().open(question).get(0).value()));
        }

        assertThat(asked.subList(0, 3)).containsExactly("body-era", "drive-side", "market");
        assertThat(asked.get(3)).isEqualTo("export");
        assertThat(asked.subList(asked.size() - 2, asked.size())).containsExactly("colour", "cover-colour");
    }

    @Test
    void tells_what_an_answer_settles_beside_its_question() {
        List<Choice> settled = interview.answer(Van.choice("market=north-america"));

        assertThat(settled)
                .containsExactlyInAnyOrder(Van.choice("drive-side=left"), Van.choice("supply=split-phase-32"));
    }

    @Test
    void takes_the_newest_answer_for_the_one_that_means_most_below_what_has_a_rank() {
        interview.answer(Van.choice("market=europe"));
        interview.answer(Van.choice("heater=water"));
        OptionName colour = new OptionName("colour");

        assertThat(interview
                        .importance(new Importance(Set.of(), List.of(colour)))
                        .rank())
                .containsExactly(colour, new OptionName("heater"), new OptionName("market"));
    }

    @Test
    void goes_back_to_where_it_was() {
        ChoiceState.Sound before = interview.standing();
        interview.answer(Van.choice("market=north-america"));

        assertThat(interview.undo()).isTrue();
        assertThat(interview.standing()).isEqualTo(before);
        assertThat(interview.undo()).isFalse();
    }

    @Test
    void puts_a_question_off_behind_all_others() {
        Option first = interview.question().orElseThrow();
        interview.putOff(first);

        assertThat(interview.question().orElseThrow()).isNotEqualTo(first);
        while (interview.question().filter(next -> !next.equals(first)).isPresent()) {
            Option question = interview.question().orElseThrow();
            interview.answer(new Choice(
                    question.name(), interview.standing().open(question).get(0).value()));
        }
        assertThat(interview.standing().questions()).isSubsetOf(first);
    }

    @Test
    void takes_no_answer_that_is_closed() {
        interview.answer(Van.choice("market=europe"));

        assertThatIllegalArgumentException().isThrownBy(() -> interview.answer(Van.choice("inlet=j3400")));
    }
}

package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Family;
import boltlore.choosing.CrowdedFamily;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A catalogue of 1,500 yes-or-no options and 4,000 limits")
class CrowdedCatalogueTest {

    @TempDir
    static Path folder;

    @BeforeAll
    static void write() throws IOException {
        Family family = CrowdedFamily.of(1500, 2, 4000, 1);
        CrowdedCatalogue.write(folder, family);
    }

    private static Ran run(List<String> words) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of("--catalogue", folder.toString()));
        return Ran.boltlore(all.toArray());
    }

    private static JsonNode json(List<String> words) throws IOException {
        return new ObjectMapper().readTree(run(words).out());
    }

    @Test
    void is_read_chosen_in_and_counted_exactly_where_few_questions_are_left() throws IOException {
        List<String> chosen = new ArrayList<>();
        json(List.of("choose", "small", "--cheapest", "--json"))
                .get("choices")
                .properties()
                .forEach(choice ->
                        chosen.add(choice.getKey() + "=" + choice.getValue().asText()));
        List<String> first = chosen.subList(0, 1400);

        String counted = json(with(List.of("orders", "small", "--json"), first))
                .get("orders")
                .asText();
        String card =
                run(with(List.of("choose", "small", "--within", "5m"), first)).out();

        assertThat(counted).matches("[1-9][0-9]*");
        assertThat(card)
                .contains("Note: no price: workshop/pricing.json holds nothing of that name")
                .contains("%,d valid orders remain.".formatted(Long.parseLong(counted)));
    }

    private static List<String> with(List<String> words, List<String> choices) {
        return Stream.concat(words.stream(), choices.stream()).toList();
    }

    @Test
    void says_that_it_was_not_counted_where_that_takes_too_long() {
        Ran ran = run(List.of("orders", "small", "--within", "1s"));

        assertThat(ran.exit()).isEqualTo(Exit.UNDECIDED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("found no answer, because the time was up");
    }

    @Test
    void is_proved_as_far_as_the_time_goes() {
        Ran ran = run(List.of("prove", "small", "--within", "2s"));

        assertThat(ran.out())
                .contains("The valid orders were not counted: the time was up.")
                .contains("Unproved, because the time was up:")
                .contains("limit implied by others (");
    }
}

package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("choose")
class ChooseCommandTest {

    private static final Path ORDER = Path.of("catalog", "orders", "bl-1002.json");

    private static Ran choose(Object... arguments) {
        Object[] all = new Object[arguments.length + 1];
        all[0] = "choose";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Ran.boltlore(all);
    }

    private static String words(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void says_settled_answers_open_questions_closed_values_and_the_price_at_the_foot() {
        Ran ran = choose("pannier-van", "market=europe");

        assertThat(ran.exit()).isEqualTo(Exit.OK);
        assertThat(words(ran))
                .contains("2 of 14 questions decided")
                .contains("Type 2 with CCS2, because Europe is chosen. Public charging points")
                .contains("drive-side=left Left-hand drive")
                .contains("Split-phase, 120/240 V, 32 A: not available, because Europe is chosen.")
                .containsPattern("Price EUR [\\d,.]+ to [\\d,.]+ before tax; 7,920 valid orders remain\\.");
    }

    @Test
    void says_why_a_value_is_closed() {
        Ran ran = choose("pannier-van", "market=europe", "--why", "inlet=j3400");

        assertThat(words(ran)).startsWith("J3400: not available, because Europe is chosen. ");
    }

    @Test
    void says_the_plainest_of_several_reasons() {
        assertThat(words(choose(
                        "pannier-van", "drive-side=right", "market=united-kingdom", "--why", "supply=split-phase-32")))
                .startsWith("Split-phase, 120/240 V, 32 A: not available, because United Kingdom is chosen.");
        assertThat(words(choose(
                        "pannier-van",
                        "body-era=early",
                        "drive-side=right",
                        "market=united-kingdom",
                        "heater=none",
                        "--why",
                        "export=nema-5-15")))
                .startsWith("V2L outlet NEMA 5-15, 120 V, 15 A: not available, because United Kingdom is chosen.");
    }

    @Test
    void says_why_a_value_is_forced_and_that_another_is_available() {
        assertThat(words(choose("pannier-van", "market=europe", "--why", "inlet=type-2")))
                .startsWith("Type 2 with CCS2, because Europe is chosen.");
        assertThat(words(choose("pannier-van", "market=europe", "--why", "heater=air")))
                .isEqualTo("Air heater (PTC) is available. ");
    }

    @Test
    void says_what_would_open_a_value_with_its_price() {
        Ran ran = choose(ORDER, "--to-have", "export=cee-7-3");

        assertThat(ran.exit()).isEqualTo(Exit.OK);
        assertThat(words(ran))
                .contains("7 kW, single-phase, bidirectional (or 11 kW, three-phase, bidirectional) instead of 7 kW,"
                        + " single-phase: EUR")
                .contains(" more, same lead time.");
    }

    @Test
    void says_that_firm_choices_leave_no_way() {
        Ran ran = choose(ORDER, "--to-have", "inlet=j3400", "--fixed", "market");

        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(words(ran)).contains("because the fixed choices stand against it");
    }

    @Test
    void says_why_choices_contradict_each_other_and_how_to_mend_them() {
        Ran ran = choose("pannier-van", "market=europe", "inlet=j3400");

        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(words(ran))
                .startsWith("Europe and J3400 cannot be combined.")
                .contains("For a valid order: ")
                .contains("Type 2 with CCS2 instead of J3400");
    }

    @Test
    void would_rather_give_up_what_was_said_first_than_the_newest_wish() {
        assertThat(words(choose("pannier-van", "market=europe", "inlet=j3400")))
                .contains("1 North America instead of Europe");
        assertThat(words(choose("pannier-van", "inlet=j3400", "market=europe")))
                .contains("1 Type 2 with CCS2 instead of J3400");
    }

    @Test
    void finds_the_cheapest_kit_as_an_order_that_choose_takes_again() throws IOException {
        JsonNode cheapest = json(choose("pannier-van", "market=europe", "--cheapest", "--json"));
        Object[] again = new Object[cheapest.get("choices").size() + 2];
        again[0] = "pannier-van";
        again[1] = "--json";
        int at = 2;
        for (var each : cheapest.get("choices").properties()) {
            again[at++] = each.getKey() + "=" + each.getValue().asText();
        }

        JsonNode look = json(choose(again));

        assertThat(look.get("orders").asText()).isEqualTo("1");
        assertThat(look.get("dearest").get("price").asText())
                .isEqualTo(cheapest.get("price").asText());
    }

    private static JsonNode json(Ran ran) throws IOException {
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void tells_machines_the_state_and_reason_of_every_value() throws IOException {
        JsonNode look = json(choose("pannier-van", "market=north-america", "--json"));

        JsonNode supply = option(look, "supply");
        assertThat(supply.get("state").asText()).isEqualTo("forced");
        assertThat(supply.get("value").asText()).isEqualTo("split-phase-32");
        assertThat(supply.get("because").get("limits").get(0).get("limit").asText())
                .isEqualTo("north-america-split-phase");
        assertThat(option(look, "market").get("state").asText()).isEqualTo("chosen");
        assertThat(option(look, "inlet").get("available")).hasSize(2);
        assertThat(option(look, "inlet").get("notAvailable").get(0).get("value").asText())
                .isEqualTo("type-2");
    }

    private static JsonNode option(JsonNode look, String name) {
        for (JsonNode option : look.get("options")) {
            if (option.get("option").asText().equals(name)) {
                return option;
            }
        }
        throw new AssertionError("No option " + name);
    }

    @Test
    void says_once_that_firm_choices_contradict_each_other() {
        Ran ran = choose("pannier-van", "market=europe", "inlet=j3400", "--fixed", "market", "--fixed", "inlet");

        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(words(ran))
                .containsOnlyOnce("cannot be combined")
                .endsWith("No change helps: these choices are fixed. ");
    }

    @Test
    void a_time_limit_that_is_none_is_refused_and_one_that_is_too_short_is_told() {
        assertThat(choose("pannier-van", "--within", "soon").exit()).isEqualTo(Exit.USAGE);
        Ran card = choose("pannier-van", "--within", "0ms");
        assertThat(card.exit()).isEqualTo(Exit.OK);
        assertThat(words(card)).contains("Price range not worked out yet (allow more with --within)");
        assertThat(choose("pannier-van", "--within", "0ms", "--cheapest").exit())
                .isEqualTo(Exit.UNDECIDED);
    }

    @Test
    void names_the_nearest_option_value_and_family() {
        Ran ran = choose("pannier-van", "markt=europe", "drive-side=lft", "j3400", "heater=air", "heater=water");

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err())
                .contains("Did you mean 'market'?")
                .contains("Did you mean 'left'?")
                .contains("Did you mean 'inlet=j3400'?")
                .contains("option 'heater' twice")
                .contains("4 faults.");
        assertThat(choose("panier-van").err()).contains("Did you mean 'pannier-van'?");
        assertThat(choose("pannier-van", "--fixed", "markt").err()).contains("Did you mean 'market'?");
    }
}

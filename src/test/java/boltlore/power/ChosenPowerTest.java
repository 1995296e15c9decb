package boltlore.power;

import static boltlore.power.Wired.carries;
import static boltlore.power.Wired.charger;
import static boltlore.power.Wired.outlet;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Facts;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.demo.Demo;
import boltlore.explanation.FindingWords;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.FindingKind;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The power that an order has chosen")
class ChosenPowerTest {

    private static final Finding MORE_PHASES =
            new Finding(FindingKind.CHARGER_PHASES_ABOVE_INLET, "eleven-kw", "type-1");

    @Test
    @DisplayName("an 11 kW charger behind a single-phase inlet takes what one of its phases takes")
    void least_of_all() {
        Wired wired = new Wired()
                .with(Role.SUPPLY, "one-phase", carries(1, "230", "32"))
                .with(Role.INLET, "type-1", carries(1, "240", "32"))
                .with(Role.CHARGER, "eleven-kw", charger(3, "16", false, ""));

        assertThat(sentence(MORE_PHASES, wired)).contains("effective 3.7 kW (1 phase × 230 V × 16 A)");
    }

    @Test
    @DisplayName("the same charger on a three-phase inlet and supply takes all three")
    void three_phases() {
        Wired wired = new Wired()
                .with(Role.SUPPLY, "three-phase", carries(3, "230", "16"))
                .with(Role.INLET, "type-2", carries(3, "230", "32"))
                .with(Role.CHARGER, "eleven-kw", charger(3, "16", false, ""));

        assertThat(ChosenPower.charging(wired.choices()).map(Power::says))
                .contains("11.0 kW (3 phases × 230 V × 16 A)");
    }

    @Test
    @DisplayName("without a supply, the market's voltage and the inlet's current count")
    void without_a_supply() {
        Wired wired = new Wired()
                .with(Role.MARKET, "north", carries(1, "240", "80"))
                .with(Role.INLET, "type-1", carries(1, "230", "32"))
                .with(Role.CHARGER, "eleven-kw", charger(1, "40", false, ""));

        assertThat(ChosenPower.charging(wired.choices()).map(Power::says)).contains("7.7 kW (1 phase × 240 V × 32 A)");
    }

    @Test
    @DisplayName("without a voltage anywhere there is no figure, and none is made up")
    void no_voltage() {
        Wired wired = new Wired().with(Role.CHARGER, "eleven-kw", charger(3, "16", false, ""));

        assertThat(sentence(MORE_PHASES, wired)).doesNotContain("effective");
    }

    @Test
    @DisplayName("a load gets no more than the charger may feed out")
    void export_by_charger() {
        Wired wired = new Wired()
                .with(Role.CHARGER, "two-way", charger(1, "32", true, "3.3"))
                .with(Role.EXPORT, "outlet-16", outlet("cee-7-3", "230", "16"));

        assertThat(ChosenPower.exportKw(wired.choices()))
                .hasValueSatisfying(kw -> assertThat(kw).isEqualByComparingTo("3.3"));
    }

    @Test
    @DisplayName("a load gets no more than the outlet gives")
    void export_by_outlet() {
        Wired wired = new Wired()
                .with(Role.CHARGER, "two-way", charger(1, "32", true, "7.0"))
                .with(Role.EXPORT, "outlet-16", outlet("cee-7-3", "230", "16"));

        assertThat(ChosenPower.exportKw(wired.choices()))
                .hasValueSatisfying(kw -> assertThat(kw).isEqualByComparingTo("3.7"));
    }

    @Test
    @DisplayName("an order without an outlet exports nothing")
    void no_outlet() {
        Wired wired = new Wired()
                .with(Role.CHARGER, "two-way", charger(1, "32", true, "7.0"))
                .with(Role.EXPORT, "none", Facts.NONE);

        assertThat(ChosenPower.exportKw(wired.choices())).isEmpty();
    }

    @Test
    @DisplayName("a finding about anything else has no figure")
    void other_finding() {
        Wired wired = new Wired().with(Role.SUPPLY, "one-phase", carries(1, "230", "32"));

        assertThat(sentence(new Finding(FindingKind.STRAY, "fan"), wired)).doesNotContain("kW");
    }

    /** 1 × 230 V × 16 A = 3.68 kW, worked by hand: the charger takes 16 A in each phase. */
    @ParameterizedTest
    @DisplayName("a lead that is slow, but safe, says what is left at a public point")
    @CsvSource(
            delimiter = '|',
            value = {
                "LEAD_PHASES_BELOW_CHARGER | en | it charges safely, but slowly; at public points 3.7 kW (1 phase × 230 V × 16 A)",
                "LEAD_PHASES_BELOW_CHARGER | de | es lädt sicher, aber langsam; an Ladesäulen bleiben 3,7 kW (1 Phase × 230 V × 16 A)",
                "LEAD_AMPS_BELOW_CHARGER | fr | annonce sa fiche ; aux bornes publiques, il reste 3,7 kW (1 phase × 230 V × 16 A)"
            })
    void slow_lead(FindingKind kind, String language, String end) {
        Choices choices = Demo.bill("bl-1014").resolved().choices();

        assertThat(new FindingWords(choices.family())
                        .of(List.of(new Finding(kind, "CC-22", "eleven")), choices)
                        .all())
                .singleElement()
                .satisfies(found -> assertThat(found.says(language)).endsWith(end));
    }

    /** 3 × 230 V × 13 A = 8.97 kW, worked by hand; a lead for more than the charger takes leaves it its 11.04 kW. */
    @ParameterizedTest
    @CsvSource({"13, '9.0 kW (3 phases × 230 V × 13 A)'", "20, '11.0 kW (3 phases × 230 V × 16 A)'"})
    void a_lead_passes_what_its_plug_codes_and_no_more_than_the_charger_takes(String amps, String power) {
        PublicLead lead = new PublicLead(new PartNumber("CC-23"), 3, new BigDecimal(amps));

        assertThat(ChosenPower.through(lead, Demo.bill("bl-1014").resolved().choices())
                        .map(Power::says))
                .contains(power);
    }

    private static String sentence(Finding concluded, Wired wired) {
        return new FindingWords(wired.choices().family())
                .of(List.of(concluded), wired.choices())
                .all()
                .get(0)
                .says();
    }
}

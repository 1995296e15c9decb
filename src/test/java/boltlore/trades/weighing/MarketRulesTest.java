package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.bill.Bill;
import boltlore.bill.Masses;
import boltlore.catalogue.Aboard;
import boltlore.catalogue.BuildDate;
import boltlore.catalogue.Donor;
import boltlore.catalogue.MarketCondition;
import boltlore.catalogue.MarketCondition.Judge;
import boltlore.catalogue.MassLimit;
import boltlore.demo.Demo;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.KitFilm;
import boltlore.trades.weighing.RuleAnswer.Answer;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Conditions of the French order of 13 March 2020 on conversions, as published in short: motor of 65 to 100 % of the
 * engine's power (frandroid.com 695009), permitted masses and their distribution kept (actu-transport-logistique.fr 703865),
 * five years of age and no collector's registration (faceaurisque.com).
 */
@DisplayName("What a market asks of a conversion")
class MarketRulesTest {

    private static List<String> says(KitInWork kit, WeighingFinding kind) {
        return AxleLoadsTrade.weighing(kit).findings().all().stream()
                .filter(found -> found.kind() == kind)
                .map(Finding::says)
                .toList();
    }

    @Nested
    @DisplayName("of the mass of a demo kit")
    class Mass {

        private final KitInWork near = Demo.kit("bl-1001");

        @Test
        void is_not_decided_where_the_computed_mass_lies_within_the_tolerance_of_the_limit() {
            assertThat(says(near, WeighingFinding.MASS_NEAR_MARKET_LIMIT))
                    .singleElement()
                    .asString()
                    .startsWith("Not decided: the converted vehicle was computed ");
            assertThat(new TextWriter(200).text(AxleLoadsTrade.report(near)))
                    .contains("not decided: weigh the vehicle")
                    .doesNotContain("market limit  within", "market limit  above");
        }

        @Test
        void is_decided_further_away() {
            KitInWork far = Demo.kit("bl-1002");
            assertThat(says(far, WeighingFinding.MASS_NEAR_MARKET_LIMIT)).isEmpty();
            assertThat(new TextWriter(200).text(AxleLoadsTrade.report(far)).replaceAll(" +", " "))
                    .contains("Mass by the market limit within");
        }

        @Test
        void counts_the_film_once_as_the_batch_sheet_does() {
            Weighing weighing = AxleLoadsTrade.weighing(near);
            BigDecimal film = KitFilm.kg(near.bill(), near.catalogue().finishes());
            assertThat(weighing.filmKg()).isEqualByComparingTo(film);
            assertThat(weighing.addedKg())
                    .isEqualByComparingTo(Masses.kitKg(near.bill()).add(film).add(weighing.waterKg()));
        }

        /** By hand: 8.5 litres of concentrate at 40 % of the volume come with 8.5 × 60 / 40 = 12.75 kg of water. */
        @Test
        void counts_the_water_that_the_coolant_is_mixed_with() {
            BigDecimal litres = near.bill().quantities().get(new PartNumber("FL-COOL"));
            assertThat(litres).isEqualByComparingTo("8.5");
            assertThat(AxleLoadsTrade.weighing(near).waterKg())
                    .isCloseTo(new BigDecimal("12.75"), within(new BigDecimal("0.000001")));
        }
    }

    @Nested
    @DisplayName("beside its mass")
    class Beside {

        private RuleAnswer answer(KitInWork kit, MarketCondition condition, @Nullable Donor donor) {
            return RuleAnswer.of(
                            new MassLimit(
                                    BigDecimal.valueOf(120),
                                    BigDecimal.valueOf(2),
                                    "",
                                    "It is so.",
                                    List.of(condition)),
                            kit.bill(),
                            kit.catalogue(),
                            donor,
                            AxleLoadsTrade.weighing(kit).onAxles())
                    .get(0);
        }

        private MarketCondition power() {
            return new MarketCondition(Judge.POWER, "Power.", BigDecimal.valueOf(65), BigDecimal.valueOf(100), null);
        }

        private Donor engine(KitInWork kit, @Nullable String kw) {
            Donor donor = kit.family().donor();
            assertThat(donor).isNotNull();
            return new Donor(donor.usual(), donor.eras(), null, kw == null ? null : new BigDecimal(kw));
        }

        @Test
        void power_is_held_against_the_engine_that_comes_off() {
            KitInWork kit = Demo.kit("bl-1001");
            assertThat(answer(kit, power(), engine(kit, "90")).answer()).isEqualTo(Answer.MET);
            assertThat(answer(kit, power(), engine(kit, "89.9")).answer()).isEqualTo(Answer.NOT_MET);
            assertThat(answer(kit, power(), engine(kit, "138")).answer()).isEqualTo(Answer.MET);
            assertThat(answer(kit, power(), engine(kit, "139")).answer()).isEqualTo(Answer.NOT_MET);
        }

        @Test
        void power_is_for_a_person_where_nobody_has_told_of_the_engine() {
            KitInWork kit = Demo.kit("bl-1001");
            RuleAnswer answer = answer(kit, power(), engine(kit, null));
            assertThat(answer.answer()).isEqualTo(Answer.OPEN);
            assertThat(answer.found()).contains("'engineKw'");
        }

        @Test
        void permitted_masses_are_held_against_the_laden_vehicle() {
            KitInWork kit = Demo.kit("bl-1001");
            MarketCondition gross = new MarketCondition(Judge.GROSS_MASS, "Mass.", null, null, null);
            MarketCondition axles = new MarketCondition(Judge.AXLE_LOADS, "Axles.", null, null, null);
            assertThat(answer(kit, gross, kit.family().donor()).answer()).isEqualTo(Answer.MET);
            assertThat(answer(kit, axles, kit.family().donor()).answer())
                    .as("7 kg below what the front axle may carry, computed to 2 %")
                    .isEqualTo(Answer.NEAR);
            KitInWork heavy = new WeighedKit()
                    .added("BOX", "400", 2400, 300)
                    .aboard(Aboard.Who.LUGGAGE, "200", 2400)
                    .inWork();
            assertThat(answer(heavy, axles, null).answer()).isEqualTo(Answer.NOT_MET);
            assertThat(answer(heavy, gross, null).answer()).isEqualTo(Answer.MET);
        }

        @Test
        void a_donor_built_too_lately_is_too_young_and_of_an_older_one_the_registration_is_looked_at() {
            KitInWork kit = Demo.kit("bl-1001");
            MarketCondition five = new MarketCondition(Judge.AGE, "Five years.", null, null, 5);
            assertThat(answer(built(kit, "2024-01-01"), five, null).answer()).isEqualTo(Answer.NOT_MET);
            assertThat(answer(built(kit, "1970"), five, null).answer()).isEqualTo(Answer.OPEN);
        }

        private KitInWork built(KitInWork kit, String date) {
            BuildDate day = BuildDate.read(date).orElseThrow();
            Bill bill = kit.bill();
            Order order = new OrderBuilder(bill.order()).donorBuilt(day).build();
            return new KitInWork(kit.plan(), new Bill(order, bill.resolved(), bill.items()), LocalDate.of(2026, 3, 2));
        }

        @Test
        void all_conditions_stand_on_the_statement_and_one_that_is_not_met_is_told() {
            String text = new TextWriter(220)
                    .text(AxleLoadsTrade.report(Demo.kit("bl-1001")))
                    .replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("What else the market asks", "90 kW for an engine of 92 kW, 97.8 %", "met, as computed")
                    .contains("Registered in France in a permanent series", "for a person to");
            assertThat(says(Demo.kit("bl-1001"), WeighingFinding.MARKET_CONDITION_NOT_MET))
                    .isEmpty();
        }
    }
}

package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Electrics;
import boltlore.catalogue.PowerCable;
import boltlore.demo.Demo;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Voltage that a cable loses")
class VoltageDropTest {

    /** IEC 60228, class 5, plain copper, Ω/km at 20 °C, as printed in a cable maker's table (uecables.com/471). */
    private static final Map<String, String> CLASS_5 = Map.of(
            "2.5", "7.98", "6", "3.30", "25", "0.780", "35", "0.554", "50", "0.386", "70", "0.272", "95", "0.206");

    private static PowerCable cable(String ohmPerKm, int hottestC) {
        BigDecimal any = BigDecimal.valueOf(100);
        return new PowerCable(new PartNumber("W"), any, new BigDecimal(ohmPerKm), hottestC, any, any, "anyhow", any);
    }

    private static VoltageDrop drop(String ohmPerKm, int hottestC, int mm, String amps, int phases, String volts) {
        return VoltageDrop.of(cable(ohmPerKm, hottestC), mm, new BigDecimal(amps), phases, new BigDecimal(volts));
    }

    @Test
    @DisplayName("25 mm² flexible, 83.3 A, 1.45 m out and back, copper at 20 °C: 2 × 0.78 × 0.00145 × 83.3 = 0.1884 V")
    void direct_current() {
        VoltageDrop drop = drop("0.780", 20, 1450, "83.3", 1, "12");

        assertThat(drop.volts()).isCloseTo(new BigDecimal("0.1884"), within(new BigDecimal("0.0001")));
        assertThat(drop.percent()).isCloseTo(new BigDecimal("1.570"), within(new BigDecimal("0.001")));
    }

    @Test
    @DisplayName("three phases lose √3 / 2 of what a pair loses")
    void three_phases() {
        BigDecimal pair = drop("3.3", 90, 10_000, "16", 1, "400").volts();
        BigDecimal three = drop("3.3", 90, 10_000, "16", 3, "400").volts();

        assertThat(three.divide(pair, MathContext.DECIMAL64))
                .isCloseTo(new BigDecimal("0.866025"), within(new BigDecimal("0.000001")));
    }

    @ParameterizedTest(name = "{0} °C: 1 / {1}")
    @DisplayName(
            "resistance rises with the copper's heat as the factors to 20 °C printed beside IEC 60228 (uecables.com/471)")
    @CsvSource({"20, 1.000", "50, 0.893", "70, 0.833", "90, 0.781", "100, 0.758"})
    void heat(int celsius, String toTwenty) {
        BigDecimal hot = VoltageDrop.hotOhmPerKm(cable("1", celsius));

        assertThat(BigDecimal.ONE.divide(hot, MathContext.DECIMAL64))
                .isCloseTo(new BigDecimal(toTwenty), within(new BigDecimal("0.005")));
    }

    @Test
    @DisplayName("the demo's cables have the resistance of IEC 60228, class 5, which is above ρ / A of pure copper")
    void of_the_demo() {
        for (String family : new String[] {"pannier-van", "stook-pickup"}) {
            Electrics electrics = Demo.catalogue().family(family).electrics();
            assertThat(electrics.cables()).isNotEmpty().allSatisfy(each -> {
                assertThat(each.ohmPerKm())
                        .isEqualByComparingTo(CLASS_5.get(each.areaMm2().toPlainString()));
                // 1/58 Ω mm²/m at 20 °C (IEC 60028): no flexible conductor has less.
                assertThat(each.ohmPerKm())
                        .isGreaterThan(new BigDecimal("1000")
                                .divide(new BigDecimal("58").multiply(each.areaMm2()), MathContext.DECIMAL64));
            });
        }
    }
}

package boltlore.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PercentTest {

    /** The JDK's own division, in decimal128 of IEEE 754, says what is right: digits and scale alike. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "0.00",
                "5",
                "20",
                "100",
                "12.50",
                "-7.5",
                "1E+3",
                "0.0010",
                "1234567890123456789012345678901234",
                "12345678901234567890123456789012345"
            })
    void aFractionIsAHundredthWithItsScale(String percent) {
        BigDecimal given = new BigDecimal(percent);
        assertThat(Percent.fraction(given)).isEqualTo(given.divide(BigDecimal.valueOf(100), MathContext.DECIMAL128));
    }
}

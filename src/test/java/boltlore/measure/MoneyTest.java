package boltlore.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Digits of the minor units: ISO 4217, list one. */
@DisplayName("An amount has its currency's own digits")
class MoneyTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EUR|24026.885|EUR 24,026.89",
                "JPY|1234.5|JPY 1,235",
                "KWD|1234.5|KWD 1,234.500",
                "GBP|-0.004|GBP 0.00",
            })
    void in_words(String code, BigDecimal amount, String says) {
        assertThat(Money.says(amount, Currency.getInstance(code))).isEqualTo(says);
    }
}

package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The example is the usual one of text books on apportionment (from memory): 100,000 votes for 10 seats. */
@DisplayName("The largest remainder method")
class LargestRemainderTest {

    private static List<BigDecimal> weights(String... weights) {
        return List.of(weights).stream().map(BigDecimal::new).toList();
    }

    private static List<Integer> shares(int total, String... weights) {
        return LargestRemainder.shares(BigInteger.valueOf(total), weights(weights)).stream()
                .map(BigInteger::intValue)
                .toList();
    }

    @Test
    void gives_the_seats_of_the_text_books() {
        assertThat(shares(10, "47000", "16000", "15800", "12000", "6100", "3100"))
                .containsExactly(5, 2, 1, 1, 1, 0);
    }

    @Test
    void gives_what_is_left_to_the_first_of_equals() {
        assertThat(shares(100, "1", "1", "1")).containsExactly(34, 33, 33);
    }

    @Test
    void counts_weights_of_nothing_as_equal_and_gives_nothing_to_nobody() {
        assertThat(shares(5, "0", "0")).containsExactly(3, 2);
        assertThat(shares(5)).isEmpty();
        assertThat(shares(5, "0", "2.50")).containsExactly(0, 5);
    }
}

package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

/** What holds of shares whatever is divided. */
class LargestRemainderLawsTest {

    @Property(tries = 300)
    void shares_add_up_and_none_is_a_whole_unit_off(
            @ForAll @BigRange(min = "0", max = "10000000") BigInteger total,
            @ForAll @Size(min = 1, max = 30) List<@BigRange(min = "0", max = "9999") @Scale(3) BigDecimal> weights) {
        List<BigInteger> shares = LargestRemainder.shares(total, weights);
        assertThat(shares.stream().reduce(BigInteger.ZERO, BigInteger::add)).isEqualTo(total);
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        for (int i = 0; sum.signum() > 0 && i < shares.size(); i++) {
            BigDecimal off = new BigDecimal(shares.get(i))
                    .multiply(sum)
                    .subtract(new BigDecimal(total).multiply(weights.get(i)));
            assertThat(off.abs()).isLessThan(sum);
        }
    }
}

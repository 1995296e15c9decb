package boltlore.logic;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sum over conditions as wishes with a price: each literal would be fulfilled, or its weight is paid. Conditions that
 * say the same are one wish.
 */
final class Objective {

    private static final int MOST_DIGITS = 9;
    private static final BigInteger MOST = BigInteger.ONE.shiftLeft(61);

    private final ValidOrders orders;
    private final Map<Integer, Long> weights = new LinkedHashMap<>();
    private final int digits;
    private BigDecimal base = BigDecimal.ZERO;

    Objective(ValidOrders orders, List<Term> terms) {
        this.orders = orders;
        Map<Integer, BigDecimal> sums = new LinkedHashMap<>();
        for (Term term : terms) {
            orders.deadline().check();
            sums.merge(orders.conditions().number(term.when()), term.quantity(), BigDecimal::add);
        }
        digits = digits(sums);
        sums.forEach((when, sum) -> wish(when, inGrains(sum)));
    }

    private void wish(int when, long weight) {
        int always = orders.conditions().always();
        if (when == SolverInternals.not(always) || weight == 0) {
            return;
        }
        if (when == always || weight < 0) {
            base = base.add(exact(weight));
        }
        if (when != always) {
            int wish = weight > 0 ? SolverInternals.not(when) : when;
            weights.merge(orders.conditions().meant(wish), Math.abs(weight), Long::sum);
        }
    }

    /** As many decimals as fit, at most nine. */
    private static int digits(Map<Integer, BigDecimal> sums) {
        BigDecimal all = sums.values().stream().map(BigDecimal::abs).reduce(BigDecimal.ONE, BigDecimal::add);
        int digits = MOST_DIGITS;
        while (all.movePointRight(digits).toBigInteger().compareTo(MOST) > 0) {
            digits--;
        }
        return digits;
    }

    private long inGrains(BigDecimal amount) {
        return amount.setScale(digits, RoundingMode.HALF_UP).unscaledValue().longValueExact();
    }

    /** What is paid in all when that many grains are paid for wishes that are not fulfilled. */
    BigDecimal total(long grains) {
        return base.add(exact(grains));
    }

    private BigDecimal exact(long grains) {
        return BigDecimal.valueOf(grains, digits);
    }

    Map<Integer, Long> weights() {
        return weights;
    }

    int digits() {
        return digits;
    }
}

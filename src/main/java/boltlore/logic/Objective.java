package boltlore.logic;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.logicng.formulas.FType;
import org.logicng.formulas.Formula;
import org.logicng.formulas.Literal;

/**
 * A sum over conditions as wishes with a price: each literal would be fulfilled, or its weight is paid. Conditions that
 * are the same formula are one wish.
 */
final class Objective {

    private static final int MOST_DIGITS = 9;
    private static final BigInteger MOST = BigInteger.ONE.shiftLeft(61);

    private final ValidOrders orders;
    private final Map<Literal, Long> weights = new LinkedHashMap<>();
    private final int digits;
    private BigDecimal base = BigDecimal.ZERO;

    Objective(ValidOrders orders, List<Term> terms) {
        this.orders = orders;
        Map<Formula, BigDecimal> sums = new LinkedHashMap<>();
        for (Term term : terms) {
            sums.merge(orders.formula(term.when()), term.quantity(), BigDecimal::add);
        }
        digits = digits(sums);
        sums.forEach((when, sum) -> wish(when, inGrains(sum)));
    }

    private void wish(Formula when, long weight) {
        if (when.type() == FType.FALSE || weight == 0) {
            return;
        }
        if (when.type() == FType.TRUE || weight < 0) {
            base = base.add(exact(weight));
        }
        if (when.type() != FType.TRUE) {
            Formula wish = weight > 0 ? when.negate() : when;
            weights.merge(orders.selectorOf(wish), Math.abs(weight), Long::sum);
        }
    }

    /** As many decimals as fit, at most nine. */
    private static int digits(Map<Formula, BigDecimal> sums) {
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

    Map<Literal, Long> weights() {
        return weights;
    }

    int digits() {
        return digits;
    }
}

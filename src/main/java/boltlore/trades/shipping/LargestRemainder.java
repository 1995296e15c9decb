package boltlore.trades.shipping;

import boltlore.measure.Money;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Divides an amount into whole units by weights so that the shares add up to it exactly: each gets its share rounded down,
 * and what is left goes, unit by unit, to those that lost most by rounding (largest remainder method, of Hamilton or
 * Hare–Niemeyer, as seats are given out in elections); of equal ones to the first.
 */
final class LargestRemainder {

    private LargestRemainder() {}

    /**
     * Shares in the order of the weights, each less than one unit away from its exact share.
     *
     * @param total in units, 0 or more
     * @param weights 0 or more each; where all are 0 they count as equal, and where there are none nothing is given out
     */
    static List<BigInteger> shares(BigInteger total, List<BigDecimal> weights) {
        List<BigInteger> whole = whole(weights);
        BigInteger sum = sum(whole);
        List<BigInteger[]> parts = whole.stream()
                .map(weight -> total.multiply(weight).divideAndRemainder(sum))
                .toList();
        List<BigInteger> shares =
                new ArrayList<>(parts.stream().map(part -> part[0]).toList());
        BigInteger left = shares.isEmpty() ? BigInteger.ZERO : total.subtract(sum(shares));
        List<BigInteger> remainders = parts.stream().map(part -> part[1]).toList();
        largest(remainders, left.intValueExact())
                .forEach(i -> shares.set(i, shares.get(i).add(BigInteger.ONE)));
        return List.copyOf(shares);
    }

    /** Shares of an amount of money, in whole minor units of the currency. */
    static List<BigDecimal> shares(BigDecimal amount, List<BigDecimal> weights, Currency currency) {
        int digits = Money.digits(currency);
        return shares(amount.movePointRight(digits).toBigIntegerExact(), weights).stream()
                .map(share -> new BigDecimal(share, digits))
                .toList();
    }

    private static BigInteger sum(List<BigInteger> all) {
        return all.stream().reduce(BigInteger.ZERO, BigInteger::add);
    }

    /** The weights times one power of ten, so that nothing is rounded. */
    private static List<BigInteger> whole(List<BigDecimal> weights) {
        if (weights.stream().allMatch(weight -> weight.signum() == 0)) {
            return Collections.nCopies(weights.size(), BigInteger.ONE);
        }
        int scale = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        return weights.stream()
                .map(weight -> weight.setScale(scale).unscaledValue())
                .toList();
    }

    private static List<Integer> largest(List<BigInteger> remainders, int count) {
        return IntStream.range(0, remainders.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> remainders.get(i)).reversed())
                .limit(count)
                .toList();
    }
}

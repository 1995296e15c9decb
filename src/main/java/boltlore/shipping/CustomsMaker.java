package boltlore.shipping;

import boltlore.catalogue.Customs;
import boltlore.pricing.MinorUnit;
import boltlore.pricing.PricedBill;
import boltlore.pricing.PricedExtra;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Groups what is sent by customs code and origin. The customs value is the price paid or payable (transaction value,
 * Article 1 of the WTO agreement on customs valuation): extras at their own price, the kit's price shared out by cost, with
 * the {@linkplain LargestRemainder largest remainder method}, so that the lines add up to what the customer pays. No cost
 * stands in a line, only its share of the price.
 */
final class CustomsMaker {

    private final PricedBill priced;
    private final PieceCosts costs;
    private final int digits;

    private CustomsMaker(PricedBill priced) {
        this.priced = priced;
        this.costs = PieceCosts.of(priced);
        this.digits = new MinorUnit(priced.currency()).digits();
    }

    /** By code, then by origin; goods without a code first. */
    static List<CustomsLine> of(List<Goods> goods, PricedBill priced) {
        return new CustomsMaker(priced).lines(goods);
    }

    private List<CustomsLine> lines(List<Goods> goods) {
        List<List<Goods>> groups = groups(goods);
        List<BigInteger> shares = LargestRemainder.shares(
                minor(priced.kitPrice().price()),
                groups.stream().map(this::weight).toList());
        List<CustomsLine> lines = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            lines.add(line(groups.get(i), new BigDecimal(shares.get(i), digits)));
        }
        return List.copyOf(lines);
    }

    private static List<List<Goods>> groups(List<Goods> goods) {
        SortedMap<String, List<Goods>> groups = new TreeMap<>();
        goods.forEach(each ->
                groups.computeIfAbsent(key(each), key -> new ArrayList<>()).add(each));
        return List.copyOf(groups.values());
    }

    private static String key(Goods goods) {
        return Tariff.digits(hs(goods)) + " " + origin(goods);
    }

    private static String hs(Goods goods) {
        Customs customs = goods.part() == null ? null : goods.part().customs();
        return customs == null ? "" : customs.hs();
    }

    private static String origin(Goods goods) {
        Customs customs = goods.part() == null ? null : goods.part().customs();
        return customs == null ? "" : customs.origin();
    }

    private BigInteger minor(BigDecimal price) {
        return price.movePointRight(digits).toBigIntegerExact();
    }

    private BigDecimal weight(List<Goods> group) {
        return group.stream()
                .filter(goods -> goods.extra() == null)
                .map(costs::of)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private CustomsLine line(List<Goods> group, BigDecimal share) {
        BigDecimal extras = group.stream().map(this::extraPrice).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal pieces =
                sum(group.stream().filter(goods -> !goods.measured()).map(Goods::packed));
        BigDecimal netKg = sum(group.stream().map(goods -> goods.kg(goods.packed())));
        Goods first = group.get(0);
        return new CustomsLine(hs(first), origin(first), group, pieces, measured(group), netKg, share.add(extras));
    }

    private BigDecimal extraPrice(Goods goods) {
        return priced.extras().stream()
                .filter(extra -> extra.extra().equals(goods.extra()))
                .map(PricedExtra::price)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    private static List<String> measured(List<Goods> group) {
        SortedMap<String, BigDecimal> sums = new TreeMap<>();
        group.stream()
                .filter(Goods::measured)
                .forEach(goods -> sums.merge(goods.unit(), goods.packed(), BigDecimal::add));
        return sums.entrySet().stream()
                .map(sum -> sum.getValue().stripTrailingZeros().toPlainString() + " " + sum.getKey())
                .toList();
    }

    private static BigDecimal sum(Stream<BigDecimal> all) {
        return all.reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

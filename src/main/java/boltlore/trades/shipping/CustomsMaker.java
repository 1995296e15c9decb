package boltlore.trades.shipping;

import boltlore.catalogue.Customs;
import boltlore.catalogue.SellingTerms;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Groups what is sent by customs code and origin. The customs value is the price paid or payable (transaction value,
 * Article 1 of the WTO agreement on customs valuation): extras at their own price, the kit's price shared out by mass and by
 * what the workshop's own list says a kilogram of each class is worth, with the {@linkplain LargestRemainder largest
 * remainder method}, so that the lines add up to what the customer pays. No cost is looked at, so none can be worked out.
 */
final class CustomsMaker {

    private final @Nullable SellingPrice price;
    private final SellingTerms selling;

    private CustomsMaker(@Nullable SellingPrice price, SellingTerms selling) {
        this.price = price;
        this.selling = selling;
    }

    /** By code, then by origin; goods without a code first. */
    static List<CustomsLine> make(List<Goods> goods, @Nullable SellingPrice price, SellingTerms selling) {
        return new CustomsMaker(price, selling).lines(groups(goods));
    }

    private List<CustomsLine> lines(List<List<Goods>> groups) {
        List<BigDecimal> weights = groups.stream().map(this::weight).toList();
        SellingPrice known = price;
        List<BigDecimal> shares =
                known == null ? List.of() : LargestRemainder.shares(known.kit(), weights, known.currency());
        List<CustomsLine> lines = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            List<Goods> group = groups.get(i);
            lines.add(line(group, known == null ? null : shares.get(i).add(extras(group, known))));
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

    private BigDecimal weight(List<Goods> group) {
        BigDecimal perKg = perKg(selling, hs(group.get(0)));
        return group.stream()
                .filter(goods -> goods.extra() == null)
                .map(goods -> goods.kg(goods.quantity()).multiply(perKg))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Value of a kilogram by the workshop's list; of a class that is not in it the least, and 1 where there is no list. */
    static BigDecimal perKg(SellingTerms selling, String hs) {
        return selling.customsValue(hs)
                .map(SellingTerms.GoodsValue::perKg)
                .or(() -> selling.customsValues().stream()
                        .map(SellingTerms.GoodsValue::perKg)
                        .min(Comparator.naturalOrder()))
                .orElse(BigDecimal.ONE);
    }

    private static CustomsLine line(List<Goods> group, @Nullable BigDecimal value) {
        BigDecimal pieces =
                sum(group.stream().filter(goods -> !goods.measured()).map(Goods::packed));
        BigDecimal netKg = sum(group.stream().map(goods -> goods.kg(goods.packed())));
        Goods first = group.get(0);
        return new CustomsLine(hs(first), origin(first), group, pieces, measured(group), netKg, value);
    }

    /** Equal extras are in one group and have one price together. */
    private static BigDecimal extras(List<Goods> group, SellingPrice price) {
        return sum(group.stream()
                .map(Goods::extra)
                .filter(Objects::nonNull)
                .distinct()
                .map(extra -> price.extras().getOrDefault(extra, BigDecimal.ZERO)));
    }

    private static List<String> measured(List<Goods> group) {
        SortedMap<String, BigDecimal> sums = new TreeMap<>();
        group.stream()
                .filter(Goods::measured)
                .forEach(goods -> sums.merge(goods.unit(), goods.packed(), BigDecimal::add));
        return sums.entrySet().stream()
                .map(sum -> Digits.plain(sum.getValue()) + " " + sum.getKey())
                .toList();
    }

    private static BigDecimal sum(Stream<BigDecimal> all) {
        return all.reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

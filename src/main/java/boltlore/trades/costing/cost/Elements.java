package boltlore.trades.costing.cost;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** Amounts by element in one currency; an element that is not in it is 0. */
public record Elements(Map<Element, BigDecimal> amounts) {

    public static final Elements NONE = new Elements(Map.of());

    public Elements {
        Map<Element, BigDecimal> copy = new EnumMap<>(Element.class);
        copy.putAll(amounts);
        amounts = Collections.unmodifiableMap(copy);
    }

    public static Elements sum(Collection<Elements> all) {
        Map<Element, BigDecimal> sum = new EnumMap<>(Element.class);
        all.forEach(each -> each.amounts.forEach((element, amount) -> sum.merge(element, amount, BigDecimal::add)));
        return new Elements(sum);
    }

    public BigDecimal of(Element element) {
        return amounts.getOrDefault(element, BigDecimal.ZERO);
    }

    public BigDecimal total() {
        return amounts.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The same with that much more of an element. */
    public Elements with(Element element, BigDecimal more) {
        Map<Element, BigDecimal> sum = new EnumMap<>(Element.class);
        sum.putAll(amounts);
        sum.merge(element, more, BigDecimal::add);
        return new Elements(sum);
    }

    public Elements plus(Elements other) {
        Map<Element, BigDecimal> sum = new EnumMap<>(Element.class);
        sum.putAll(amounts);
        other.amounts.forEach((element, amount) -> sum.merge(element, amount, BigDecimal::add));
        return new Elements(sum);
    }
}

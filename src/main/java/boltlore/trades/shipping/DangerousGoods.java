package boltlore.trades.shipping;

import boltlore.catalogue.Transport;
import boltlore.order.Extra;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Dangerous goods of one UN number in an order's crates.
 *
 * @param crates that hold them, and nothing else
 */
public record DangerousGoods(String un, List<Crate> crates) {

    /** By UN number. */
    static List<DangerousGoods> of(List<Crate> crates) {
        SortedMap<String, List<Crate>> byNumber = new TreeMap<>();
        crates.stream()
                .map(crate -> crate.load().un())
                .filter(un -> !un.isEmpty())
                .forEach(un -> byNumber.computeIfAbsent(un, each -> holding(each, crates)));
        return byNumber.entrySet().stream()
                .map(entry -> new DangerousGoods(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static List<Crate> holding(String un, List<Crate> crates) {
        return crates.stream().filter(crate -> crate.load().un().equals(un)).toList();
    }

    /** Empty for a number that this program does not know. */
    public Optional<UnNumber> entry() {
        return UnNumber.of(un);
    }

    public boolean lithium() {
        return entry().map(UnNumber::lithium).orElse(false);
    }

    public Stream<Packed> packed() {
        return crates.stream().flatMap(crate -> crate.packed().stream());
    }

    public BigDecimal pieces() {
        return packed().map(Packed::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Mass of the articles without packaging; of an extra that tells less, that much of it. */
    public BigDecimal netKg() {
        return packed().map(DangerousGoods::netKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal netKg(Packed packed) {
        Extra extra = packed.goods().extra();
        BigDecimal each =
                extra == null || extra.goods() == null ? null : extra.goods().netKg();
        return each == null ? packed.kg() : each.multiply(packed.quantity());
    }

    /** Energy of all that say theirs. */
    public BigDecimal wattHours() {
        return packed().map(DangerousGoods::wattHours).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal wattHours(Packed packed) {
        Transport transport = packed.goods().transport();
        BigDecimal each = transport == null ? null : transport.wattHours();
        return each == null ? BigDecimal.ZERO : each.multiply(packed.quantity());
    }
}

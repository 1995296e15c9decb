package boltlore.trades.shipping;

import boltlore.catalogue.EnvelopeMm;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;

/** Figures and lists as sentences say them. */
final class NumberFormats {

    static final int NAMED = 4;

    private NumberFormats() {}

    /** '12.5 kg'. */
    static String kg(BigDecimal kg) {
        return Digits.upTo(kg, 1) + " kg";
    }

    /** With so many decimals at most, for a sentence in any language. */
    static BigDecimal number(BigDecimal number, int decimals) {
        return new BigDecimal(Digits.upTo(number, decimals));
    }

    /** The first few. */
    static String first(List<String> names) {
        return String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    }

    /** How many there are beside the first few. */
    static int more(List<String> names) {
        return Math.max(0, names.size() - NAMED);
    }

    /** '3, 4'. */
    static String numbers(Collection<Crate> crates) {
        return String.join(
                ", ", crates.stream().map(crate -> "" + crate.number()).toList());
    }

    /** 'crate 3', 'crates 3, 4'. */
    static String crates(Collection<Crate> crates) {
        return (crates.size() == 1 ? "crate " : "crates ") + numbers(crates);
    }

    /** '1236 × 836 × 745'. */
    static String size(EnvelopeMm size) {
        return size.length() + " × " + size.width() + " × " + size.height();
    }
}

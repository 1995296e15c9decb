package boltlore.trades.shipping;

import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Figures and lists as sentences say them. */
public final class Told {

    private static final int NAMED = 4;

    private Told() {}

    /** '12.5 kg'. */
    public static String kg(BigDecimal kg) {
        return Digits.upTo(kg, 1) + " kg";
    }

    /** The first few, and how many more there are. */
    static String some(List<String> names) {
        String first = names.stream().limit(NAMED).collect(Collectors.joining(", "));
        return names.size() > NAMED ? first + " and " + (names.size() - NAMED) + " more" : first;
    }

    /** 'crate 3', 'crates 3, 4'. */
    public static String crates(Collection<Crate> crates) {
        String numbers = crates.stream().map(crate -> "" + crate.number()).collect(Collectors.joining(", "));
        return (crates.size() == 1 ? "crate " : "crates ") + numbers;
    }
}

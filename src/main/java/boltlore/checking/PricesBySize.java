package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.catalogue.Transport;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Prices of the dearest things, of which a kit's catalogue has too few to compare with one another: lithium modules by the
 * kWh, traction drive units by the kW. Windows: common practice, no source, with room for small lots and for used ones.
 */
final class PricesBySize {

    /** Of about one worth: in others nothing is said. */
    private static final Set<String> CURRENCIES = Set.of("EUR", "USD", "GBP", "CHF");

    private static final BigDecimal LEAST_PER_KWH = BigDecimal.valueOf(40);
    private static final BigDecimal MOST_PER_KWH = BigDecimal.valueOf(1_200);
    private static final BigDecimal LEAST_PER_KW = BigDecimal.valueOf(12);
    private static final BigDecimal MOST_PER_KW = BigDecimal.valueOf(350);
    private static final int KILO = 3;

    private PricesBySize() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        if (!CURRENCIES.contains(catalogue.workshop().currency().getCurrencyCode())) {
            return Stream.empty();
        }
        return Stream.concat(
                        catalogue.parts().values().stream().flatMap(PricesBySize::module),
                        catalogue.families().values().stream()
                                .flatMap(family -> family.driving().driveUnits().stream())
                                .flatMap(unit -> drive(catalogue.part(unit.part()), unit)))
                .distinct();
    }

    private static Stream<Remark> module(Part part) {
        Transport transport = part.transport();
        return transport == null || transport.wattHours() == null
                ? Stream.empty()
                : within(part, transport.wattHours().movePointLeft(KILO), "kWh", LEAST_PER_KWH, MOST_PER_KWH);
    }

    private static Stream<Remark> drive(Part part, DriveUnit unit) {
        return within(part, unit.peakWatts().movePointLeft(KILO), "kW", LEAST_PER_KW, MOST_PER_KW);
    }

    private static Stream<Remark> within(Part part, BigDecimal size, String unit, BigDecimal least, BigDecimal most) {
        if (part.source() != Source.BUY || part.cost().signum() == 0 || size.signum() == 0) {
            return Stream.empty();
        }
        BigDecimal each = part.cost().divide(size, MathContext.DECIMAL64);
        return each.compareTo(least) >= 0 && each.compareTo(most) <= 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.PRICE_UNLIKE,
                        "a cost of " + Digits.plain(part.cost()) + " for " + Digits.upTo(size, 1) + " " + unit + ", "
                                + Digits.upTo(each, 1) + " for a " + unit,
                        Digits.plain(least) + " to " + Digits.plain(most) + " for a " + unit + " (common practice)",
                        "Look at the point in 'cost'; ask the supplier where it is right"));
    }
}

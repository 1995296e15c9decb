package boltlore.trades.weighing;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Station;
import boltlore.order.Extra;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * An extra of the order as it weighs in the vehicle.
 *
 * @param says what it is
 * @param massKg of its whole quantity
 */
public record ExtraLoad(String says, BigDecimal massKg, Station at) {

    /** Empty where its mass or its place is not known. */
    static Optional<ExtraLoad> of(Extra extra, Catalogue catalogue) {
        Station at = extra.at();
        return at == null
                ? Optional.empty()
                : eachKg(extra, catalogue)
                        .map(each -> new ExtraLoad(says(extra, catalogue), each.multiply(extra.quantity()), at));
    }

    private static Optional<BigDecimal> eachKg(Extra extra, Catalogue catalogue) {
        return extra.part() == null
                ? Optional.ofNullable(extra.massKg())
                : Optional.of(Masses.eachKg(catalogue.part(extra.part()), catalogue::part));
    }

    static String says(Extra extra, Catalogue catalogue) {
        return extra.part() == null
                ? extra.says()
                : catalogue.part(extra.part()).name().english();
    }

    Balance balance() {
        return Balance.of(massKg, at);
    }

    public AxleLoads on(int wheelbaseMm) {
        return balance().on(BigDecimal.valueOf(wheelbaseMm));
    }
}

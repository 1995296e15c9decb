package boltlore.trades.weighing;

import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Station;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An item of the bill's first level with all inside it, as it weighs in the vehicle.
 *
 * @param at null where neither its position nor its sub-system has a station
 * @param measured whether the station is the position's own and not its sub-system's
 */
public record Added(Item item, BigDecimal massKg, @Nullable Station at, boolean measured) {

    static Added of(Item item, @Nullable Station at, boolean measured) {
        BigDecimal massKg = item.all().map(Masses::ownKg).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new Added(item, massKg, at, measured);
    }

    public String subSystem() {
        return item.position().subSystem();
    }

    /** Something that weighs and has no place. */
    boolean unplaced() {
        return at == null && massKg.signum() != 0;
    }

    /** Empty where it has no place. */
    Optional<Balance> balance() {
        return at == null ? Optional.empty() : Optional.of(Balance.of(massKg, at));
    }

    /** What it adds to the axles; nothing where it has no place. */
    public AxleLoads on(int wheelbaseMm) {
        return balance().orElse(Balance.NONE).on(BigDecimal.valueOf(wheelbaseMm));
    }
}

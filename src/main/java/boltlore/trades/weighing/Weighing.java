package boltlore.trades.weighing;

import boltlore.bill.Bill;
import boltlore.catalogue.Removed;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one order's kit does to the weights of its donor vehicle.
 *
 * @param era value of the option in role era, or empty
 * @param added items of the bill's first level
 * @param extras of the order, those whose mass and place are known
 * @param missing what is not known, a sentence each
 * @param growth null where the donor's mass is not known
 * @param onAxles null where the donor's axle loads or the station of something that weighs is not known
 */
public record Weighing(
        Bill bill,
        String era,
        List<Removed> removed,
        List<Added> added,
        List<ExtraLoad> extras,
        List<String> missing,
        @Nullable Growth growth,
        @Nullable OnAxles onAxles) {

    public BigDecimal removedKg() {
        return removed.stream().map(Removed::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal addedKg() {
        return added.stream().map(Added::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal extrasKg() {
        return extras.stream().map(ExtraLoad::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Limits of axles and vehicle that a load exceeds. */
    public List<Check> exceeded() {
        return onAxles == null
                ? List.of()
                : onAxles.checks().stream().filter(Check::exceeded).toList();
    }

    /** Whether a limit of axle, vehicle or market is exceeded, or an axle would lift off. */
    public boolean stops() {
        return !exceeded().isEmpty()
                || (growth != null && growth.exceeded())
                || (onAxles != null && onAxles.liftsOff());
    }
}

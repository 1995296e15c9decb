package boltlore.trades.weighing;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.MassLimit;
import boltlore.catalogue.Removed;
import boltlore.findings.Findings;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What one order's kit does to the weights of its donor vehicle.
 *
 * @param era value of the option in role era, or empty
 * @param added items of the bill's first level
 * @param extras of the order, those whose mass and place are known
 * @param growth null where the donor's mass is not known
 * @param conditions of the market beside that on mass
 * @param onAxles null where the donor's axle loads or the station of something that weighs is not known
 * @param findings limits that are exceeded, and what is not known
 */
public record Weighing(
        Bill bill,
        String era,
        List<Removed> removed,
        List<Added> added,
        List<ExtraLoad> extras,
        @Nullable Growth growth,
        @Nullable OnAxles onAxles,
        List<RuleAnswer> conditions,
        Findings findings) {

    Weighing with(Findings found) {
        return new Weighing(bill, era, removed, added, extras, growth, onAxles, conditions, found);
    }

    /** How far weighed and computed may be apart, in per cent. */
    BigDecimal tolerancePercent() {
        MassLimit limit = growth == null ? null : growth.limit();
        return limit == null ? MassLimit.USUAL_TOLERANCE_PERCENT : limit.tolerancePercent();
    }

    public BigDecimal removedKg() {
        return removed.stream().map(Removed::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal addedKg() {
        return added.stream().map(Added::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal filmKg() {
        return added.stream().map(Added::filmKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal waterKg() {
        return added.stream().map(Added::waterKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal extrasKg() {
        return extras.stream().map(ExtraLoad::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What of the kit loads that most, the heaviest first; equal ones in the order of the bill. */
    public List<Added> heaviest(Limited limited, int wheelbaseMm) {
        return added.stream()
                .sorted(Comparator.comparing(
                                (Added each) -> each.on(wheelbaseMm).on(limited))
                        .reversed())
                .toList();
    }

    /** The battery with its boxes: the sub-system of what travels as dangerous goods. */
    public Optional<SubSystemLoad> battery(int wheelbaseMm) {
        return added.stream()
                .filter(each -> each.item().all().map(Item::part).anyMatch(part -> part.transport() != null))
                .findFirst()
                .flatMap(cells -> SubSystemLoad.of(this, wheelbaseMm).stream()
                        .filter(load -> load.subSystem().equals(cells.subSystem()))
                        .findFirst());
    }

    /** Whether a limit of axle, vehicle or market is exceeded, or an axle would lift off. */
    public boolean stops() {
        return findings.stops();
    }
}

package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle on its axles.
 *
 * @param standings the donor first, then the converted vehicle empty and as far as it is known who and what goes aboard
 * @param payload what may still be loaded beside driver and passengers, or null where no place for luggage is known
 * @param height null where the height of the donor's centre of gravity is not known
 */
public record OnAxles(
        Chassis chassis,
        List<Standing> standings,
        BigDecimal centreBeforeMm,
        BigDecimal centreAfterMm,
        FrontShare frontShare,
        @Nullable PayloadLeft payload,
        @Nullable CentreHeight height) {

    public Optional<Standing> standing(Stand stand) {
        return standings.stream().filter(each -> each.stand() == stand).findFirst();
    }

    public AxleLoads donor() {
        return standings.get(0).loads();
    }

    public AxleLoads converted() {
        return standings.get(1).loads();
    }

    public BigDecimal shiftMm() {
        return centreAfterMm.subtract(centreBeforeMm);
    }

    /** Every load of the converted vehicle beside its limit. */
    public List<Check> checks() {
        return standings.stream()
                .skip(1)
                .flatMap(each -> Check.of(each, chassis))
                .toList();
    }

    /** An axle that would lift off: more comes off than it carries. */
    public boolean liftsOff() {
        return standings.stream()
                .anyMatch(each -> each.loads().frontKg().signum() < 0
                        || each.loads().rearKg().signum() < 0);
    }
}

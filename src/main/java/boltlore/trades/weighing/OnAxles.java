package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle on its axles.
 *
 * @param cases before conversion first, then the converted vehicle empty and as far as it is known who and what goes aboard
 * @param payload what may still be loaded beside driver and passengers, or null where no place for luggage is known
 * @param height null where the height of the donor's centre of gravity is not known
 */
public record OnAxles(
        Chassis chassis,
        List<CaseLoads> cases,
        BigDecimal centreBeforeMm,
        BigDecimal centreAfterMm,
        FrontShare frontShare,
        @Nullable PayloadLeft payload,
        @Nullable CentreHeight height) {

    public Optional<CaseLoads> in(LoadCase loadCase) {
        return cases.stream().filter(each -> each.loadCase() == loadCase).findFirst();
    }

    public AxleLoads donor() {
        return cases.get(0).loads();
    }

    public AxleLoads converted() {
        return cases.get(1).loads();
    }

    public BigDecimal shiftMm() {
        return centreAfterMm.subtract(centreBeforeMm);
    }

    /** Every load of the converted vehicle beside its limit. */
    public List<LimitCheck> checks() {
        return cases.stream().skip(1).flatMap(each -> each.checks(chassis)).toList();
    }

    public List<LimitCheck> exceeded() {
        return checks().stream().filter(LimitCheck::exceeded).toList();
    }

    /** An axle that would lift off: more comes off than it carries. */
    public boolean liftsOff() {
        return cases.stream()
                .anyMatch(each -> each.loads().frontKg().signum() < 0
                        || each.loads().rearKg().signum() < 0);
    }
}

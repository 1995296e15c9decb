package boltlore.trades.testing;

import boltlore.bill.Bill;
import boltlore.catalogue.Demand;
import boltlore.catalogue.Instrument;
import boltlore.catalogue.LimitRule;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;

/** Turns what a test asks for into the limit of one kit. */
final class LimitCalculator {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Whose result is worked out from the pack's voltage, which is read with it. */
    private static final Set<LimitRule> OF_THE_PACK = EnumSet.of(LimitRule.ISOLATION, LimitRule.PRECHARGE_VOLTS);

    private final PackRules pack;
    private final MainsRules mains;

    private LimitCalculator(PackRules pack, MainsRules mains) {
        this.pack = pack;
        this.mains = mains;
    }

    static LimitCalculator of(Bill bill) {
        return new LimitCalculator(
                new PackRules(PackFigures.of(bill)),
                new MainsRules(bill.resolved().choices()));
    }

    ComputedLimit limit(Demand demand, Instrument instrument) {
        String unit = instrument.scale() == null ? "" : instrument.scale().unit();
        if (demand instanceof Demand.Computed reckoned) {
            return computed(reckoned);
        } else if (demand instanceof Demand.InState inState) {
            return new ComputedLimit(new Limit.InState(inState.state()), "", "");
        } else if (demand instanceof Demand.AtLeast atLeast) {
            return new ComputedLimit(new Limit.AtLeast(atLeast.least()), "", unit);
        } else if (demand instanceof Demand.AtMost atMost) {
            return new ComputedLimit(new Limit.AtMost(atMost.most()), "", unit);
        }
        Demand.Between between = (Demand.Between) demand;
        return new ComputedLimit(new Limit.Between(between.least(), between.most()), "", unit);
    }

    private ComputedLimit computed(Demand.Computed demand) {
        Figure figure = switch (demand.rule()) {
            case BONDING -> PackRules.bonding();
            case BONDING_AMPS -> PackRules.bondingAmps();
            case ISOLATION -> pack.isolation();
            case PRECHARGE_TIME -> pack.prechargeTime();
            case PRECHARGE_VOLTS -> PackRules.prechargeVolts();
            case TRIP_AMPS -> pack.tripAmps();
            case TRIP_TIME -> pack.tripTime();
            case DEAD_ISOLATION -> pack.deadIsolation();
            case MAINS_ISOLATION -> mains.isolation();
            case MAINS_ISOLATION_PER_VOLT -> mains.isolationPerVolt();
            case EXPORT_ISOLATION -> mains.exportIsolation();
            case PILOT_DUTY -> mains.pilotDuty();
            case CHARGE_AMPS -> mains.chargeAmps();
            case CHARGE_POWER -> mains.chargePower();
            case EXPORT_VOLTS -> mains.exportVolts();
        };
        BigDecimal suited = demand.rule() == LimitRule.ISOLATION ? pack.suitedOhm() : null;
        Limit.Between volts = OF_THE_PACK.contains(demand.rule()) ? pack.volts() : null;
        return new ComputedLimit(limit(figure, demand), figure.basis(), figure.unit(), suited, volts);
    }

    private static Limit limit(Figure figure, Demand.Computed demand) {
        if (figure.value() == null) {
            return new Limit.Unknown(figure.missing() == null ? NotKnown.PACK : figure.missing());
        }
        return switch (demand.rule().way()) {
            case AT_LEAST -> new Limit.AtLeast(figure.value());
            case AT_MOST -> figure.itselfFails() ? new Limit.Below(figure.value()) : new Limit.AtMost(figure.value());
            case AROUND -> around(figure.value(), demand.withinPercent());
        };
    }

    private static Limit around(BigDecimal target, BigDecimal withinPercent) {
        BigDecimal within = target.multiply(withinPercent).divide(HUNDRED);
        return new Limit.Between(Figure.up(target.subtract(within)), Figure.down(target.add(within)));
    }
}

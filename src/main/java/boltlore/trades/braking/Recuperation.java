package boltlore.trades.braking;

import boltlore.catalogue.Driving;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.Driven;
import boltlore.catalogue.Driving.RoadLoad;
import boltlore.choices.Conditions;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;

/** What the drive unit brakes with at the wheels of the driven axle, in N at most. */
record Recuperation(double newton, Driven axle) {

    static final Recuperation NONE = new Recuperation(0, Driven.REAR);

    private static final double PERCENT = 100;
    private static final double MM = 1000;

    /**
     * Greatest torque against the motor's turning, times all ratios over the rolling radius; what gears lose brakes as well.
     * None where the catalogue names none.
     */
    static Recuperation of(KitInWork kit) {
        Driving driving = kit.family().driving();
        RoadLoad road = driving.roadLoads().stream()
                .filter(each -> Conditions.holds(each.when(), kit.choices()))
                .findFirst()
                .orElse(null);
        if (road == null) {
            return NONE;
        }
        return driving.driveUnits().stream()
                .filter(unit -> kit.bill().quantities().containsKey(unit.part()))
                .filter(unit -> unit.recuperationNm() != null)
                .map(unit -> new Recuperation(newton(unit, road), road.driven()))
                .findFirst()
                .orElse(NONE);
    }

    private static double newton(DriveUnit unit, RoadLoad road) {
        BigDecimal torqueNm = unit.recuperationNm() == null ? BigDecimal.ZERO : unit.recuperationNm();
        double efficiency = unit.gearPercent().multiply(road.axlePercent()).doubleValue() / PERCENT / PERCENT;
        return torqueNm.multiply(unit.ratio()).multiply(road.axleRatio()).doubleValue()
                * MM
                / road.rollingRadiusMm()
                / efficiency;
    }
}

package boltlore.trades.driving;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Driving.Auxiliary;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.Driven;
import boltlore.catalogue.Driving.Promise;
import boltlore.catalogue.Driving.RoadLoad;
import boltlore.catalogue.Pack;
import boltlore.choices.Conditions;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.driving.ConvertedVehicle.Footing;
import boltlore.trades.driving.ConvertedVehicle.Held;
import boltlore.trades.driving.ConvertedVehicle.Reached;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.AxleLoadsTrade;
import boltlore.trades.weighing.CaseLoads;
import boltlore.trades.weighing.LoadCase;
import boltlore.trades.weighing.OnAxles;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts one order's vehicle on the road, from the family's data and the weights that the weight statement has. */
final class DrivingMaker {

    /** @param vehicle null where something that it takes is not known; the findings say what */
    record Drive(@Nullable ConvertedVehicle vehicle, Findings findings) {}

    private final KitInWork kit;
    private final Driving driving;
    private final List<Finding> missing = new ArrayList<>();

    private DrivingMaker(KitInWork kit) {
        this.kit = kit;
        this.driving = kit.family().driving();
    }

    static Drive make(KitInWork kit) {
        return new DrivingMaker(kit).drive();
    }

    private Drive drive() {
        if (driving.roadLoads().isEmpty()) {
            missing("driving.json");
            return new Drive(null, new Findings(missing));
        }
        OnAxles onAxles = AxleLoadsTrade.weighing(kit).onAxles();
        if (onAxles == null) {
            missing("'donor' in family.json, or a station in weights.json,");
        }
        RoadLoad road = one("'roadLoads' in driving.json", all(driving.roadLoads(), RoadLoad::when));
        DriveUnit unit = one(
                "'driveUnits' in driving.json",
                driving.driveUnits().stream()
                        .filter(each -> kit.bill().quantities().containsKey(each.part()))
                        .toList());
        Pack pack =
                one("'packs' in electrics.json", all(kit.family().electrics().packs(), Pack::when));
        Driving.Energy energy = one(
                "'energy' in driving.json", Stream.ofNullable(driving.energy()).toList());
        if (onAxles == null || road == null || unit == null || pack == null || energy == null) {
            return new Drive(null, new Findings(missing));
        }
        Promise promise = one("'promises' in driving.json", all(driving.promises(), Promise::when));
        ConvertedVehicle vehicle = vehicle(onAxles, road, unit, pack, energy, promise);
        return new Drive(vehicle, new Findings(missing).and(judged(vehicle)));
    }

    private ConvertedVehicle vehicle(
            OnAxles onAxles,
            RoadLoad road,
            DriveUnit unit,
            Pack pack,
            Driving.Energy energy,
            @Nullable Promise promise) {
        List<CaseLoads> cases = onAxles.cases();
        AxleLoads laden = cases.get(cases.size() - 1).loads();
        AxleLoads alone = onAxles.in(LoadCase.DRIVER).map(CaseLoads::loads).orElse(onAxles.converted());
        double mild = watts(false);
        double climate = watts(true);
        double feeds = pack.continuousAmps().multiply(pack.nominalVolts()).doubleValue() - mild - climate;
        return new ConvertedVehicle(
                Resistance.of(laden.totalKg().doubleValue(), road),
                Resistance.of(alone.totalKg().doubleValue(), road),
                Resistance.of(onAxles.chassis().grossKg().doubleValue(), road),
                new Traction(unit, road, Math.max(0, feeds)),
                footing(onAxles, laden, road),
                energy,
                pack.usableKwh().doubleValue(),
                mild,
                climate,
                promise);
    }

    private static Footing footing(OnAxles onAxles, AxleLoads laden, RoadLoad road) {
        boolean rear = road.driven() == Driven.REAR;
        double onDriven = (rear ? laden.rearKg() : laden.frontKg()).doubleValue();
        double heightMm =
                onAxles.height() == null ? 0 : onAxles.height().afterMm().doubleValue();
        return new Footing(
                road.grip().doubleValue(),
                onDriven / laden.totalKg().doubleValue(),
                rear ? 1 : -1,
                heightMm / onAxles.chassis().wheelbaseMm());
    }

    private double watts(boolean climate) {
        return all(driving.auxiliaries(), Auxiliary::when).stream()
                .filter(each -> each.climate() == climate)
                .map(Auxiliary::watts)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .doubleValue();
    }

    static Findings judged(ConvertedVehicle vehicle) {
        Promise promise = vehicle.promise();
        return promise == null
                ? Findings.NONE
                : new Findings(Stream.of(speed(vehicle, promise), restart(vehicle, promise), range(vehicle, promise))
                        .flatMap(found -> found)
                        .toList());
    }

    private static Stream<Finding> speed(ConvertedVehicle vehicle, Promise promise) {
        double wanted = promise.topSpeedKmh().doubleValue();
        double rpm = vehicle.traction().rpm(ConvertedVehicle.ms(wanted));
        int most = vehicle.traction().unit().mostRpm();
        if (rpm > most) {
            return Stream.of(Finding.of(
                    DrivingFinding.MOTOR_OVERSPEED,
                    "motor speed",
                    "speed",
                    promise.topSpeedKmh(),
                    "rpm",
                    BigDecimal.valueOf(rpm).setScale(0, RoundingMode.CEILING),
                    "most",
                    most));
        }
        return vehicle.keeps(ConvertedVehicle.ms(wanted))
                ? Stream.of()
                : Stream.of(Finding.of(
                        DrivingFinding.TOP_SPEED_NOT_REACHED,
                        "top speed",
                        "speed",
                        promise.topSpeedKmh(),
                        "reached",
                        floored(ConvertedVehicle.kmh(vehicle.topSpeed().figure()), 1)));
    }

    private static Stream<Finding> restart(ConvertedVehicle vehicle, Promise promise) {
        Reached restart = vehicle.restart();
        double percent = 100 * restart.figure();
        return percent >= promise.gradientPercent().doubleValue()
                ? Stream.of()
                : Stream.of(Finding.of(
                        DrivingFinding.GRADIENT_NOT_RESTARTED,
                        "gradient",
                        "gradient",
                        promise.gradientPercent(),
                        "reached",
                        floored(percent, 1),
                        "mass",
                        BigDecimal.valueOf(vehicle.gross().massKg()).stripTrailingZeros(),
                        "grip",
                        restart.by() == Held.GRIP ? 1 : 0));
    }

    private static Stream<Finding> range(ConvertedVehicle vehicle, Promise promise) {
        double ms = ConvertedVehicle.ms(promise.rangeAtKmh().doubleValue());
        double range = vehicle.everydayKm(vehicle.laden(), ms, false);
        return range >= promise.rangeKm().doubleValue()
                ? Stream.of()
                : Stream.of(Finding.of(
                        DrivingFinding.RANGE_BELOW_PROMISE,
                        "range",
                        "range",
                        floored(range, 0),
                        "promised",
                        promise.rangeKm(),
                        "speed",
                        promise.rangeAtKmh()));
    }

    /** Rounded to the strict side, so that what is too little never prints as enough. */
    private static BigDecimal floored(double number, int decimals) {
        return BigDecimal.valueOf(number).round(new MathContext(9)).setScale(decimals, RoundingMode.FLOOR);
    }

    private <T> List<T> all(List<T> from, Function<T, Condition> when) {
        return from.stream()
                .filter(each -> Conditions.holds(when.apply(each), kit.choices()))
                .toList();
    }

    private <T> @Nullable T one(String file, List<T> found) {
        if (found.size() == 1) {
            return found.get(0);
        }
        missing(file);
        return null;
    }

    private void missing(String file) {
        missing.add(Finding.of(KitFinding.NOT_JUDGED, "driving", "trade", "Driving", "file", file));
    }
}

package boltlore.catalogue.json;

import boltlore.catalogue.Driving;
import boltlore.catalogue.Driving.Auxiliary;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.Driven;
import boltlore.catalogue.Driving.Energy;
import boltlore.catalogue.Driving.Promise;
import boltlore.catalogue.Driving.RoadLoad;
import boltlore.catalogue.Driving.Torque;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/** families/…/driving.json: road load, drive units, losses, what sales promise; brakes, coolant, mounts. */
final class DrivingFile {

    private static final Allowed<Driven> DRIVEN = Allowed.of(Driven.values());
    private static final Range SHARE = Range.above(0, 1);
    private static final Range PERCENT = Range.above(0, 100);
    private static final Range RATIO = Range.above(0, 30);
    private static final Range NM = Range.between(0, 5_000);
    private static final Range KMH = Range.above(0, 300);
    private static final int FASTEST_RPM = 30_000;

    private final Reading reading;
    private final ConditionReading overOptions;

    DrivingFile(Reading reading) {
        this.reading = reading;
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
    }

    Driving read(ObjectReader reader) {
        return new Driving(
                reader.findObjects("roadLoads", this::roadLoad),
                reader.findObjects("driveUnits", this::driveUnit),
                reader.findObject("energy", DrivingFile::energy).orElse(null),
                reader.findObjects("auxiliaries", this::auxiliary),
                reader.findObjects("promises", this::promise),
                new BrakesReading(overOptions).read(reader),
                new CoolingReading(reading, overOptions).read(reader),
                new MountsReading(reading, overOptions).read(reader));
    }

    private RoadLoad roadLoad(ObjectReader reader) {
        BigDecimal perMs = reader.findDecimal("rollingPerMs", SHARE);
        return new RoadLoad(
                overOptions.orAlways(reader, "when"),
                reader.decimal("dragAreaM2", Range.above(0, 10)),
                reader.decimal("rollingCoefficient", SHARE),
                perMs == null ? BigDecimal.ZERO : perMs,
                reader.whole("rollingRadiusMm", 100, 1_000),
                reader.decimal("axleRatio", RATIO),
                reader.decimal("axlePercent", PERCENT),
                reader.decimal("rotatingFactor", Range.between(1, 2)),
                reader.decimal("grip", SHARE),
                reader.oneOf("driven", DRIVEN),
                reader.text("source"));
    }

    private DriveUnit driveUnit(ObjectReader reader) {
        DriveUnit unit = new DriveUnit(
                new PartNumber(reading.namedOnce(reader, "part", Kind.DRIVE_UNIT, Kind.PART)),
                reader.decimal("ratio", RATIO),
                reader.decimal("gearPercent", PERCENT),
                reader.decimal("motorPercent", PERCENT),
                reader.whole("mostRpm", 1, FASTEST_RPM),
                reader.findDecimal("recuperationNm", Range.between(0, 1_000)),
                reader.objects("curve", DrivingFile::torque),
                reader.text("source"));
        if (reader.sound()) {
            whole(reader, unit);
        }
        return unit;
    }

    private static Torque torque(ObjectReader reader) {
        Torque torque = new Torque(
                reader.whole("rpm", 0, FASTEST_RPM), reader.decimal("peakNm", NM), reader.decimal("continuousNm", NM));
        if (reader.sound() && torque.continuousNm().compareTo(torque.peakNm()) > 0) {
            reader.faultAt(
                    "continuousNm",
                    torque.continuousNm() + " Nm for hours",
                    "at most the " + torque.peakNm() + " Nm for seconds",
                    "Swap them, or mend one.");
        }
        return torque;
    }

    private static void whole(ObjectReader reader, DriveUnit unit) {
        boolean rising = true;
        int before = -1;
        for (Torque torque : unit.curve()) {
            rising = rising && torque.rpm() > before;
            before = torque.rpm();
        }
        if (!rising || unit.curve().get(0).rpm() != 0 || before != unit.mostRpm()) {
            reader.faultAt(
                    "curve",
                    "speeds from " + unit.curve().get(0).rpm() + " to " + before + " rpm",
                    "rising speeds from 0 to the " + unit.mostRpm() + " rpm under 'mostRpm'",
                    "Give the torque at both ends.");
        }
    }

    private static Energy energy(ObjectReader reader) {
        return new Energy(
                reader.decimal("batteryPercent", PERCENT),
                reader.decimal("everydayPercent", Range.between(0, 200)),
                reader.text("source"));
    }

    private Auxiliary auxiliary(ObjectReader reader) {
        return new Auxiliary(
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                reader.decimal("watts", Range.above(0, 20_000)),
                reader.truth("climate", false));
    }

    private Promise promise(ObjectReader reader) {
        return new Promise(
                overOptions.orAlways(reader, "when"),
                reader.decimal("rangeKm", Range.above(0, 2_000)),
                reader.decimal("rangeAtKmh", KMH),
                reader.decimal("topSpeedKmh", KMH),
                reader.decimal("gradientPercent", PERCENT));
    }
}

package boltlore.catalogue.json;

import boltlore.catalogue.Buses;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Driving;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.FusedCircuit;
import boltlore.catalogue.LowVoltage;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.PowerCable;
import boltlore.catalogue.PublicLead;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.util.List;

/** families/…/electrics.json: pack, charger, inlet, DC link, fuses and cables of the power wiring. */
final class ElectricsFile {

    private static final Allowed<Buses> BUSES = Allowed.of(Buses.values(), Buses::written);
    private static final Allowed<Fuse.Guards> GUARDS = Allowed.of(Fuse.Guards.values(), Fuse.Guards::written);

    private static final Range MICROFARAD = Range.above(0, 100_000);
    private static final Range NANOFARAD = Range.above(0, 100_000);

    /** Voltage of class A ends at 60 V. */
    private static final Range EXTRA_LOW = Range.above(0, 60);

    private static final Range OHM_PER_KM = Range.above(0, 100);
    private static final int LEAST_C = 20;
    private static final int MOST_C = 250;
    private static final int MOST_MM = 10_000;
    private static final Range MM2 = Range.above(0, 1_000);
    private static final Range KILOAMPS = Range.above(0, 200);
    private static final Range K_FACTOR = Range.between(50, 300);
    private static final int LEAST_TRIP = 4;
    /** What protects people who touch a live part (IEC 60364-4-41, 415.1.1). */
    private static final int MOST_TRIP = 30;

    private static final int SLOWEST_MS = 1_000;

    private final Reading reading;
    private final ConditionReading overOptions;
    private final PackReading packs;
    private final BranchReading branches;

    ElectricsFile(Reading reading, List<Driving.DriveUnit> driveUnits) {
        this.reading = reading;
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
        this.packs = new PackReading(reading);
        this.branches = new BranchReading(reading, overOptions, driveUnits);
    }

    Electrics read(ObjectReader reader) {
        return new Electrics(
                reader.findOneOf("buses", BUSES),
                reader.findObject("lowVoltage", this::lowVoltage).orElse(null),
                reader.findObject("limits", ElectricsFile::limits).orElse(null),
                reader.findObjects("packs", packs::pack),
                reader.findObjects("chargers", packs::charger),
                reader.findObjects("inlets", packs::inlet),
                reader.findObjects("capacitors", this::capacitor),
                reader.findObjects("prechargeResistors", packs::resistor),
                reader.findObjects("fuses", this::fuse),
                reader.findObjects("cables", this::cable),
                reader.findObjects("branches", branches::branch),
                reader.findObjects("publicLeads", this::lead),
                reader.findObjects("outlets", this::outlet),
                reader.findObjects("circuits", this::circuit));
    }

    private Capacitor capacitor(ObjectReader reader) {
        return new Capacitor(
                reading.named(reader, "capacitor", Kind.CAPACITOR),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                reader.decimal("microfarad", MICROFARAD),
                reader.findDecimal("yNanofarad", NANOFARAD),
                reading.findMentioned(reader, "branch", Kind.BRANCH));
    }

    private LowVoltage lowVoltage(ObjectReader reader) {
        LowVoltage network = new LowVoltage(
                reader.decimal("highestVolts", EXTRA_LOW),
                reader.decimal("lowestVolts", EXTRA_LOW),
                reader.decimal("resistanceMilliohm", PackReading.MILLIOHM));
        if (reader.sound() && network.lowestVolts().compareTo(network.highestVolts()) > 0) {
            reader.fault(
                    "from " + network.lowestVolts() + " to " + network.highestVolts() + " V",
                    "a lowest voltage below the highest",
                    "Swap them, or mend one.");
        }
        return network;
    }

    private static ElectricLimits limits(ObjectReader reader) {
        return new ElectricLimits(
                reader.findDecimal("dropPercent", PackReading.PERCENT),
                reader.findWhole("unfusedMm", 0, MOST_MM),
                reader.findDecimal("yJoule", Range.above(0, 1)),
                reader.text("source"));
    }

    private PublicLead lead(ObjectReader reader) {
        PublicLead lead = new PublicLead(
                new PartNumber(reading.namedOnce(reader, "part", Kind.LEAD, Kind.PART)),
                reader.whole("phases", 1, 3),
                reader.decimal("amps", PackReading.AMPS),
                reader.findDecimal("wireAmps", PackReading.AMPS));
        BranchReading.oneOrThree(reader, lead.phases());
        return lead;
    }

    private Fuse fuse(ObjectReader reader) {
        return new Fuse(
                reading.named(reader, "fuse", Kind.FUSE),
                reader.text("says"),
                reading.part(reader, "part"),
                reader.decimal("amps", PackReading.AMPS),
                reader.decimal("volts", PackReading.VOLTS),
                reader.decimal("breakingKiloamps", KILOAMPS),
                reader.decimal("letThroughA2s", Range.POSITIVE),
                reader.oneOf("guards", GUARDS));
    }

    private PowerCable cable(ObjectReader reader) {
        return new PowerCable(
                new PartNumber(reading.namedOnce(reader, "cable", Kind.CABLE, Kind.PART)),
                reader.decimal("areaMm2", MM2),
                reader.decimal("ohmPerKm", OHM_PER_KM),
                reader.whole("hottestC", LEAST_C, MOST_C),
                reader.decimal("volts", PackReading.VOLTS),
                reader.decimal("amps", PackReading.AMPS),
                reader.text("assumed"),
                reader.decimal("kFactor", K_FACTOR));
    }

    private FusedCircuit circuit(ObjectReader reader) {
        return new FusedCircuit(
                reading.named(reader, "circuit", Kind.FUSED_CIRCUIT),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                new PositionName(reading.mentioned(reader, "position", Kind.POSITION)),
                reader.decimal("loadAmps", PackReading.AMPS),
                reader.decimal("wireMm2", MM2),
                reader.decimal("wireAmps", PackReading.AMPS));
    }

    private Outlet outlet(ObjectReader reader) {
        return new Outlet(
                overOptions.orAlways(reader, "when"),
                reader.text("residual"),
                reader.whole("tripMilliamps", LEAST_TRIP, MOST_TRIP),
                reader.whole("withinMilliseconds", 1, SLOWEST_MS),
                BranchReading.shareOrAll(reader, "continuousShare"));
    }
}

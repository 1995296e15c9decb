package boltlore.catalogue.json;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Buses;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.PowerCable;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;

/** families/…/electrics.json: pack, charger, inlet, DC link, fuses and cables of the high-voltage system. */
final class ElectricsFile {

    private static final Allowed<Buses> BUSES = Allowed.of(Buses.values(), Buses::written);
    private static final Allowed<Fuse.Guards> GUARDS = Allowed.of(Fuse.Guards.values(), Fuse.Guards::written);

    private static final Range MICROFARAD = Range.above(0, 100_000);
    private static final Range MM2 = Range.above(0, 1_000);
    private static final Range KILOAMPS = Range.above(0, 200);
    private static final Range SHARE = Range.above(0, 1);
    private static final Range K_FACTOR = Range.between(50, 300);
    private static final int LEAST_TRIP = 4;
    private static final int MOST_TRIP = 500;
    private static final int SLOWEST_MS = 1_000;

    private final Reading reading;
    private final ConditionReading overOptions;
    private final PackReading packs;

    ElectricsFile(Reading reading) {
        this.reading = reading;
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
        this.packs = new PackReading(reading);
    }

    Electrics read(ObjectReader reader) {
        return new Electrics(
                reader.findOneOf("buses", BUSES),
                reader.findObjects("packs", packs::pack),
                reader.findObjects("chargers", packs::charger),
                reader.findObjects("inlets", packs::inlet),
                reader.findObjects("capacitors", this::capacitor),
                reader.findObjects("prechargeResistors", packs::resistor),
                reader.findObjects("fuses", this::fuse),
                reader.findObjects("cables", this::cable),
                reader.findObjects("branches", this::branch),
                reader.findObjects("outlets", this::outlet));
    }

    private Capacitor capacitor(ObjectReader reader) {
        return new Capacitor(
                reading.named(reader, "capacitor", Kind.CAPACITOR),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                reader.decimal("microfarad", MICROFARAD));
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
                reader.decimal("volts", PackReading.VOLTS),
                reader.decimal("amps", PackReading.AMPS),
                reader.text("assumed"),
                reader.decimal("kFactor", K_FACTOR));
    }

    private Branch branch(ObjectReader reader) {
        return new Branch(
                reading.named(reader, "branch", Kind.BRANCH),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                new PositionName(reading.mentioned(reader, "position", Kind.POSITION)),
                reader.decimal("loadAmps", PackReading.AMPS),
                reader.findDecimal("volts", PackReading.VOLTS),
                reading.findMentioned(reader, "fuse", Kind.FUSE),
                new PartNumber(reading.mentioned(reader, "cable", Kind.CABLE)),
                shareOrAll(reader, "derating"),
                Reading.textOrNone(reader, "because"));
    }

    private Outlet outlet(ObjectReader reader) {
        return new Outlet(
                overOptions.orAlways(reader, "when"),
                reader.text("residual"),
                reader.whole("tripMilliamps", LEAST_TRIP, MOST_TRIP),
                reader.whole("withinMilliseconds", 1, SLOWEST_MS),
                shareOrAll(reader, "continuousShare"));
    }

    private static BigDecimal shareOrAll(ObjectReader reader, String key) {
        BigDecimal share = reader.findDecimal(key, SHARE);
        return share == null ? BigDecimal.ONE : share;
    }
}

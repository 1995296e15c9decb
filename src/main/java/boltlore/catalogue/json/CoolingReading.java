package boltlore.catalogue.json;

import boltlore.catalogue.Cooling;
import boltlore.catalogue.Cooling.Coolant;
import boltlore.catalogue.Cooling.CoolantCircuit;
import boltlore.catalogue.Cooling.Fittings;
import boltlore.catalogue.Cooling.FlowPoint;
import boltlore.catalogue.Cooling.Hose;
import boltlore.catalogue.Cooling.Passage;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;

/** 'coolants' and 'circuits' of families/…/driving.json. */
final class CoolingReading {

    private static final Range FLOW = Range.between(0, 1_000);
    private static final Range KPA = Range.between(0, 1_000);
    private static final Range BORE = Range.above(0, 100);
    private static final Range CELSIUS = Range.between(-50, 150);
    private static final int MOST_FITTINGS = 100;
    private static final Range LITRES = Range.between(0, 100);
    private static final KeyRule PUMP_WITH_PART = new KeyRule.Needs("pumpAt", "pumpPart");
    private static final KeyRule PART_WITH_PUMP = new KeyRule.Needs("pumpPart", "pumpAt");

    private final Reading reading;
    private final ConditionReading overOptions;

    CoolingReading(Reading reading, ConditionReading overOptions) {
        this.reading = reading;
        this.overOptions = overOptions;
    }

    Cooling read(ObjectReader reader) {
        return new Cooling(
                reader.findObjects("coolants", this::coolant), reader.findObjects("circuits", this::circuit));
    }

    private Coolant coolant(ObjectReader reader) {
        return new Coolant(
                reading.named(reader, "coolant", Kind.COOLANT),
                reader.text("says"),
                reader.decimal("densityKgM3", Range.between(500, 2_000)),
                reader.decimal("viscosityMpas", Range.above(0, 1_000)),
                reader.decimal("specificHeat", Range.between(1_000, 5_000)),
                reader.findDecimal("concentratePercent", Range.between(0, 100)),
                reader.text("source"));
    }

    private CoolantCircuit circuit(ObjectReader reader) {
        CoolantCircuit circuit = new CoolantCircuit(
                reading.named(reader, "circuit", Kind.CIRCUIT),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                reading.mentioned(reader, "coolant", Kind.COOLANT),
                reader.objects("pump", CoolingReading::point),
                reader.decimal("roughnessMm", Range.between(0, 1)),
                reader.findObjects("hoses", this::hose),
                reader.findObjects("fittings", CoolingReading::fittings),
                reader.findObjects("passages", CoolingReading::passage),
                reader.findDecimal("heatWatts", Range.above(0, 200_000)),
                reader.findDecimal("moduleSpecificHeat", Range.between(300, 4_000)),
                reader.decimal("radiatorWattsPerKelvin", Range.above(0, 10_000)),
                reader.decimal("airC", CELSIUS),
                reader.decimal("mostC", CELSIUS),
                fitted(reader),
                reader.text("source"));
        if (reader.sound() && !isWhole(circuit.pump())) {
            reader.faultAt(
                    "pump",
                    circuit.pump().size() + " points",
                    "rising flows from 0 on with falling pressures, down to 0 kPa",
                    "Give both ends of the pump's curve.");
        }
        return circuit;
    }

    private Cooling.Fitted fitted(ObjectReader reader) {
        String pumpAt = reading.findMentioned(reader, "pumpAt", Kind.POSITION);
        String pumpPart = reading.findMentioned(reader, "pumpPart", Kind.PART);
        String coolantAt = reading.findMentioned(reader, "coolantAt", Kind.POSITION);
        BigDecimal tank = reader.findDecimal("tankLitres", LITRES);
        if (reader.breaks(PUMP_WITH_PART) || reader.breaks(PART_WITH_PUMP)) {
            reader.fault(
                    "not both 'pumpAt' and 'pumpPart'",
                    "where the pump stands, and the part whose curve it is",
                    "Name both.");
        }
        return new Cooling.Fitted(
                pumpAt == null ? null : new PositionName(pumpAt),
                pumpPart == null ? null : new PartNumber(pumpPart),
                coolantAt == null ? null : new PositionName(coolantAt),
                tank == null ? BigDecimal.ZERO : tank,
                reader.findObjects("figuresOf", this::fittedPart));
    }

    private Cooling.FittedPart fittedPart(ObjectReader reader) {
        return new Cooling.FittedPart(
                new PositionName(reading.mentioned(reader, "position", Kind.POSITION)),
                new PartNumber(reading.mentioned(reader, "part", Kind.PART)));
    }

    private static boolean isWhole(List<FlowPoint> pump) {
        for (int i = 1; i < pump.size(); i++) {
            if (pump.get(i).litresPerMin().compareTo(pump.get(i - 1).litresPerMin()) <= 0
                    || pump.get(i).kpa().compareTo(pump.get(i - 1).kpa()) >= 0) {
                return false;
            }
        }
        return pump.get(0).litresPerMin().signum() == 0
                && pump.get(pump.size() - 1).kpa().signum() == 0;
    }

    private static FlowPoint point(ObjectReader reader) {
        return new FlowPoint(reader.decimal("litresPerMin", FLOW), reader.decimal("kpa", KPA));
    }

    private Hose hose(ObjectReader reader) {
        return new Hose(
                new PositionName(reading.mentioned(reader, "position", Kind.POSITION)), reader.decimal("boreMm", BORE));
    }

    private static Fittings fittings(ObjectReader reader) {
        return new Fittings(
                reader.text("says"),
                reader.decimal("boreMm", BORE),
                reader.decimal("zeta", Range.between(0, 100)),
                reader.whole("count", 1, MOST_FITTINGS));
    }

    private static Passage passage(ObjectReader reader) {
        return new Passage(
                reader.text("says"),
                reader.object("drop", CoolingReading::drop),
                reader.findDecimal("leastLitresPerMin", Range.above(0, 1_000)),
                reader.findDecimal("holdsLitres", LITRES));
    }

    private static FlowPoint drop(ObjectReader reader) {
        return new FlowPoint(
                reader.decimal("litresPerMin", Range.above(0, 1_000)), reader.decimal("kpa", Range.above(0, 1_000)));
    }
}

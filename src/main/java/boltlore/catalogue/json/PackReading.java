package boltlore.catalogue.json;

import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.ProximityKind;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import java.math.BigDecimal;

/** Packs, and what they are charged and precharged through. */
final class PackReading {

    /** Direct voltage of class B ends at 1,500 V. */
    static final Range VOLTS = Range.above(0, 1_500);

    static final Range AMPS = Range.above(0, 2_000);

    private static final Allowed<ProximityKind> PROXIMITY = Allowed.of(ProximityKind.values(), ProximityKind::written);
    private static final Range KWH = Range.above(0, 1_000);
    private static final Range AMP_HOURS = Range.above(0, 2_000);
    static final Range MILLIOHM = Range.above(0, 10_000);
    static final Range PERCENT = Range.above(0, 100);
    private static final Range OHM = Range.above(0, 100_000);
    private static final Range JOULE = Range.above(0, 1_000_000);
    private static final Range SECONDS = Range.above(0, 60);
    private static final int MOST_MODULES = 500;

    private final Reading reading;
    private final ConditionReading overOptions;

    PackReading(Reading reading) {
        this.reading = reading;
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
    }

    Pack pack(ObjectReader reader) {
        BigDecimal continuous = reader.decimal("continuousAmps", AMPS);
        BigDecimal peak = reader.findDecimal("peakAmps", AMPS);
        Pack pack = new Pack(
                reading.named(reader, "pack", Kind.PACK),
                reader.text("says"),
                overOptions.orAlways(reader, "when"),
                reading.part(reader, "module"),
                reader.decimal("moduleVolts", VOLTS),
                reader.decimal("moduleAmpHours", AMP_HOURS),
                reader.whole("inSeries", 1, MOST_MODULES),
                reader.whole("inParallel", 1, MOST_MODULES),
                reader.decimal("highestVolts", VOLTS),
                reader.decimal("lowestVolts", VOLTS),
                reader.decimal("resistanceMilliohm", MILLIOHM),
                reader.decimal("usableKwh", KWH),
                continuous,
                peak == null ? continuous : peak,
                reader.decimal("chargeAmps", AMPS));
        if (reader.sound()) {
            inOrder(reader, pack);
            energy(reader, pack);
            peak(reader, pack);
        }
        return pack;
    }

    private static void peak(ObjectReader reader, Pack pack) {
        if (pack.peakAmps().compareTo(pack.continuousAmps()) < 0) {
            reader.faultAt(
                    "peakAmps",
                    pack.peakAmps() + " A",
                    "at least the " + pack.continuousAmps() + " A that it bears for hours",
                    "Swap them, or mend one.");
        }
    }

    private static void inOrder(ObjectReader reader, Pack pack) {
        boolean rising = pack.lowestVolts().compareTo(pack.nominalVolts()) <= 0
                && pack.nominalVolts().compareTo(pack.highestVolts()) <= 0;
        if (!rising) {
            reader.fault(
                    "voltages " + pack.lowestVolts() + ", " + pack.nominalVolts() + " and " + pack.highestVolts()
                            + " V",
                    "lowest, nominal (modules in series times their voltage) and highest voltage in rising order",
                    "Check the modules in series and at the three voltages.");
        }
    }

    private static void energy(ObjectReader reader, Pack pack) {
        if (pack.usableKwh().compareTo(pack.nominalKwh()) > 0) {
            reader.faultAt(
                    "usableKwh",
                    pack.usableKwh() + " kWh",
                    "at most the " + Digits.plain(pack.nominalKwh()) + " kWh of its modules",
                    "Check voltage, capacity and number of the modules.");
        }
    }

    OnBoardCharger charger(ObjectReader reader) {
        OnBoardCharger charger = new OnBoardCharger(
                overOptions.orAlways(reader, "when"),
                reader.decimal("efficiencyPercent", PERCENT),
                reader.decimal("lowestVolts", VOLTS),
                reader.decimal("highestVolts", VOLTS));
        if (reader.sound()) {
            inOrder(reader, charger);
        }
        return charger;
    }

    private static void inOrder(ObjectReader reader, OnBoardCharger charger) {
        if (charger.lowestVolts().compareTo(charger.highestVolts()) > 0) {
            reader.fault(
                    "from " + charger.lowestVolts() + " to " + charger.highestVolts() + " V",
                    "a lowest voltage below the highest",
                    "Swap them, or mend one.");
        }
    }

    InletWiring inlet(ObjectReader reader) {
        String isolatedBy = reading.findMentioned(reader, "isolatedBy", Kind.POSITION);
        InletWiring inlet = new InletWiring(
                overOptions.orAlways(reader, "when"),
                reader.oneOf("proximity", PROXIMITY),
                reader.findObject("direct", PackReading::direct).orElse(null),
                reader.truth("sharedPins", false),
                isolatedBy == null ? null : new PositionName(isolatedBy));
        if (inlet.isolatedBy() != null && !inlet.sharedPins()) {
            reader.faultAt(
                    "isolatedBy",
                    "contactors between contacts that are not shared",
                    "'isolatedBy' beside \"sharedPins\": true only",
                    "Add 'sharedPins', or leave 'isolatedBy' out.");
        }
        return inlet;
    }

    private static DirectLimit direct(ObjectReader reader) {
        return new DirectLimit(reader.decimal("volts", VOLTS), reader.decimal("amps", AMPS));
    }

    PrechargeResistor resistor(ObjectReader reader) {
        return new PrechargeResistor(
                reading.part(reader, "part"),
                overOptions.orAlways(reader, "when"),
                reader.decimal("ohm", OHM),
                reader.decimal("pulseJoule", JOULE),
                reader.decimal("abortAfterSeconds", SECONDS));
    }
}

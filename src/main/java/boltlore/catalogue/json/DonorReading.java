package boltlore.catalogue.json;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The donor vehicle of family.json; a body era says only what is different in it. */
final class DonorReading {

    private static final Range KG = Range.above(0, 40_000);
    private static final Range PERCENT = Range.between(0, 100);
    private static final Range KW = Range.above(0, 1_000);
    private static final int LONGEST_MM = 10_000;

    private final Reading reading;

    DonorReading(Reading reading) {
        this.reading = reading;
    }

    Donor read(ObjectReader reader) {
        Axles loads = reader.object("axleKg", DonorReading::axles);
        Axles limits = reader.object("axleLimitKg", DonorReading::axles);
        Chassis usual = chassis(
                reader,
                reader.whole("wheelbaseMm", 500, LONGEST_MM),
                new Chassis(1, null, null, null, loads.front(), loads.rear(), limits.front(), limits.rear(), KG.most()),
                reader.decimal("grossKg", KG));
        BigDecimal leastFrontPercent = reader.findDecimal("minFrontPercent", PERCENT);
        Donor donor = new Donor(usual, eras(reader, usual), leastFrontPercent, reader.findDecimal("engineKw", KW));
        // What could not be read is not compared with stations and masses elsewhere.
        return reader.sound() ? reading.sources().put(donor, reader.spot()) : donor;
    }

    private Map<String, Chassis> eras(ObjectReader reader, Chassis usual) {
        Map<String, Chassis> eras = new LinkedHashMap<>();
        reader.findObjects("eras", era -> {
            String name = era.text("era", TextShape.NAME);
            if (eras.put(name, era(era, usual)) != null) {
                era.faultAt("era", "'" + name + "' a second time", "each era once", "Remove one of them.");
            }
            return name;
        });
        return Collections.unmodifiableMap(eras);
    }

    private Chassis era(ObjectReader reader, Chassis usual) {
        Axles loads =
                reader.findObject("axleKg", DonorReading::axles).orElse(new Axles(usual.frontKg(), usual.rearKg()));
        Axles limits = reader.findObject("axleLimitKg", DonorReading::axles)
                .orElse(new Axles(usual.frontLimitKg(), usual.rearLimitKg()));
        Integer wheelbase = reader.findWhole("wheelbaseMm", 500, LONGEST_MM);
        BigDecimal gross = reader.findDecimal("grossKg", KG);
        Chassis base = new Chassis(
                usual.wheelbaseMm(),
                usual.frontTrackMm(),
                usual.rearTrackMm(),
                usual.centreHeightMm(),
                loads.front(),
                loads.rear(),
                limits.front(),
                limits.rear(),
                usual.grossKg());
        return chassis(
                reader,
                wheelbase == null ? usual.wheelbaseMm() : wheelbase,
                base,
                gross == null ? usual.grossKg() : gross);
    }

    /** The chassis with the lengths that the reader's object says, and the others of the base. */
    private Chassis chassis(ObjectReader reader, int wheelbaseMm, Chassis base, BigDecimal grossKg) {
        Tracks tracks = reader.findObject("trackMm", DonorReading::tracks)
                .orElse(new Tracks(base.frontTrackMm(), base.rearTrackMm()));
        Integer height = reader.findWhole("centreHeightMm", 100, 4_000);
        Chassis chassis = new Chassis(
                wheelbaseMm,
                tracks.front(),
                tracks.rear(),
                height == null ? base.centreHeightMm() : height,
                base.frontKg(),
                base.rearKg(),
                base.frontLimitKg(),
                base.rearLimitKg(),
                grossKg);
        if (reader.sound()) {
            chassisCheck(chassis, reader);
        }
        return reading.sources().put(chassis, reader.spot());
    }

    private record Axles(BigDecimal front, BigDecimal rear) {}

    private static Axles axles(ObjectReader reader) {
        return new Axles(reader.decimal("front", KG), reader.decimal("rear", KG));
    }

    private record Tracks(@Nullable Integer front, @Nullable Integer rear) {}

    private static Tracks tracks(ObjectReader reader) {
        return new Tracks(reader.whole("front", 300, 4_000), reader.whole("rear", 300, 4_000));
    }

    /** A donor that is too heavy for its own axles before work begins has been weighed or copied wrongly. */
    private static void chassisCheck(Chassis chassis, ObjectReader reader) {
        axle(reader, "front", chassis.frontKg(), chassis.frontLimitKg());
        axle(reader, "rear", chassis.rearKg(), chassis.rearLimitKg());
        if (chassis.massKg().compareTo(chassis.grossKg()) > 0) {
            reader.fault(
                    "a base vehicle of " + chassis.massKg().toPlainString() + " kg and 'grossKg' "
                            + chassis.grossKg().toPlainString(),
                    "axle loads that add up to the gross limit at most",
                    "Weigh it again, or check the vehicle's plate.");
        }
    }

    private static void axle(ObjectReader reader, String axle, BigDecimal loadKg, BigDecimal limitKg) {
        if (loadKg.compareTo(limitKg) > 0) {
            reader.fault(
                    loadKg.toPlainString() + " kg on the donor's " + axle + " axle, which may carry "
                            + limitKg.toPlainString(),
                    "an axle load within the axle's limit",
                    "Weigh it again, or check the vehicle's plate.");
        }
    }
}

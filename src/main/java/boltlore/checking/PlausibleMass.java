package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Driving.DriveUnit;
import boltlore.catalogue.Driving.Torque;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Part;
import boltlore.catalogue.PowerCable;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * Masses that cannot be, judged by what other files say the part is: a drive unit by its power, a battery module by its
 * energy, a power cable by its copper. The bounds are generous, so that a slip of the point is found and no product is.
 */
final class PlausibleMass {

    /** kg for each kW of peak power, with inverter and gear: common practice, no source. */
    private static final BigDecimal LIGHTEST_DRIVE = new BigDecimal("0.2");

    private static final BigDecimal HEAVIEST_DRIVE = BigDecimal.valueOf(5);

    /** Wh for each kg of a lithium-ion module: common practice, no source. */
    private static final BigDecimal LEAST_ENERGY = BigDecimal.valueOf(40);

    private static final BigDecimal MOST_ENERGY = BigDecimal.valueOf(350);

    /** Kilograms in a metre of each mm² of copper (density 8.96 g/cm³, CRC Handbook, from memory); aluminium is lighter, screens add to it. */
    private static final BigDecimal COPPER = new BigDecimal("0.00896");

    private static final BigDecimal ALUMINIUM_SHARE = new BigDecimal("0.3");
    private static final BigDecimal SHEATHED_SHARE = BigDecimal.valueOf(6);
    private static final BigDecimal SHEATH_KG = new BigDecimal("0.2");

    /** rpm × Nm in a kW: 60 000 / 2π. */
    private static final BigDecimal RPM_NM_IN_KW = new BigDecimal("9549.3");

    private static final int DIGITS = 3;

    private PlausibleMass() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .flatMap(family -> Stream.of(
                                family.driving().driveUnits().stream().flatMap(unit -> drive(catalogue, unit)),
                                family.electrics().packs().stream().flatMap(pack -> module(catalogue, pack)),
                                family.electrics().cables().stream().flatMap(cable -> cable(catalogue, cable)))
                        .flatMap(remarks -> remarks))
                .distinct();
    }

    private static Stream<Remark> drive(Catalogue catalogue, DriveUnit unit) {
        BigDecimal kw = unit.curve().stream()
                .map(PlausibleMass::watts)
                .max(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO)
                .divide(RPM_NM_IN_KW, DIGITS, RoundingMode.HALF_UP);
        String says = Digits.upTo(kw, 0) + " kW in driving.json";
        return of(catalogue, unit.part(), kw.multiply(LIGHTEST_DRIVE), kw.multiply(HEAVIEST_DRIVE), says);
    }

    private static BigDecimal watts(Torque point) {
        return point.peakNm().multiply(BigDecimal.valueOf(point.rpm()));
    }

    private static Stream<Remark> module(Catalogue catalogue, Pack pack) {
        BigDecimal wattHours = pack.moduleVolts().multiply(pack.moduleAmpHours());
        return of(
                catalogue,
                pack.module(),
                wattHours.divide(MOST_ENERGY, DIGITS, RoundingMode.HALF_UP),
                wattHours.divide(LEAST_ENERGY, DIGITS, RoundingMode.HALF_UP),
                Digits.upTo(wattHours, 0) + " Wh in electrics.json");
    }

    /** Of what is sold by the metre, whose mass is that of a metre. */
    private static Stream<Remark> cable(Catalogue catalogue, PowerCable cable) {
        Part part = catalogue.parts().get(cable.part());
        BigDecimal copper = cable.areaMm2().multiply(COPPER);
        return part == null || !part.unit().equals("m")
                ? Stream.empty()
                : of(
                        catalogue,
                        cable.part(),
                        copper.multiply(ALUMINIUM_SHARE),
                        copper.multiply(SHEATHED_SHARE).add(SHEATH_KG),
                        "a metre of " + Digits.plain(cable.areaMm2()) + " mm² in electrics.json");
    }

    private static Stream<Remark> of(
            Catalogue catalogue, PartNumber number, BigDecimal least, BigDecimal most, String says) {
        Part part = catalogue.parts().get(number);
        BigDecimal mass = part == null ? null : part.massKg();
        return part == null
                        || mass == null
                        || most.signum() == 0
                        || (mass.compareTo(least) >= 0 && mass.compareTo(most) <= 0)
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.MASS_PLAUSIBLE,
                        "'massKg' " + Digits.plain(mass) + " for " + says,
                        Said.kg(least) + " to " + Said.kg(most) + " (common practice, generous)",
                        "Look at the point in 'massKg', and at the data sheet: axle loads, mounts, lifting and freight rest"
                                + " on it"));
    }
}

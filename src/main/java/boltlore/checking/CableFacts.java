package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.PowerCable;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Whether what electrics.json says of a cable can be true of copper of that area: its resistance, the current that it
 * carries, the heat of a short circuit that it bears. A slip there makes every comparison of load, fuse and drop come out
 * well.
 */
final class CableFacts {

    /**
     * The most that a flexible conductor of tinned copper has at 20 °C, in Ω/km by nominal area in mm² (IEC 60228:2004, table 3,
     * class 5, read in the tables of two cable makers).
     */
    private static final Map<BigDecimal, BigDecimal> MOST_OHM_PER_KM = table(
            "0.5 40.1, 0.75 26.7, 1 20.0, 1.5 13.7, 2.5 8.21, 4 5.09, 6 3.39, 10 1.95, 16 1.24, 25 0.795, 35 0.565,"
                    + " 50 0.393, 70 0.277, 95 0.210, 120 0.164, 150 0.132, 185 0.108, 240 0.0817, 300 0.0654,"
                    + " 400 0.0495, 500 0.0391, 630 0.0292");

    /** Resistivity of annealed copper at 20 °C in Ω mm²/km (IEC 60028; from memory): no conductor of the full area has less. */
    private static final BigDecimal COPPER = new BigDecimal("17.241");

    /** Above that of solid copper, for areas that the table does not name: common practice, no source. */
    private static final BigDecimal STRANDED = new BigDecimal("1.2");

    /** Below 0 °C, where copper would have no resistance (IEC 60364-5-54, table A.54.1; from memory). */
    private static final double BETA = 234.5;

    /** That copper may reach in a short circuit with thermosetting insulation, in °C (IEC 60364-4-43, table 43A; from memory). */
    private static final double HOTTEST_SHORTED = 250;

    private CableFacts() {}

    private static Map<BigDecimal, BigDecimal> table(String rows) {
        Map<BigDecimal, BigDecimal> table = new TreeMap<>();
        for (String row : rows.split(",", -1)) {
            String[] cells = row.strip().split(" ", -1);
            table.put(new BigDecimal(cells[0]), new BigDecimal(cells[1]));
        }
        return table;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return Stream.concat(
                catalogue.families().values().stream()
                        .flatMap(family -> family.electrics().cables().stream()
                                .flatMap(cable -> Stream.of(
                                                resistance(family, cable), current(family, cable), heat(family, cable))
                                        .flatMap(Optional::stream))),
                unlike(catalogue));
    }

    private static Optional<Remark> resistance(Family family, PowerCable cable) {
        BigDecimal least = COPPER.divide(cable.areaMm2(), 4, RoundingMode.DOWN);
        BigDecimal most = MOST_OHM_PER_KM.getOrDefault(cable.areaMm2().stripTrailingZeros(), least.multiply(STRANDED));
        return found(
                family,
                cable,
                cable.ohmPerKm().compareTo(least) >= 0 && cable.ohmPerKm().compareTo(most) <= 0,
                Digits.plain(cable.ohmPerKm()) + " Ω/km",
                "from " + Digits.plain(least) + " (solid copper) to " + Digits.plain(most)
                        + " Ω/km (IEC 60228:2004, table 3, class 5)");
    }

    /** The most in A that a cable carries that lies alone in air of 30 °C, with its copper at that temperature */
    static BigDecimal mostAmps(BigDecimal areaMm2, int hottestC) {
        double amps = 22.9 * StrictMath.pow(areaMm2.doubleValue(), 0.644);
        double warmer = (hottestC - 30) / 60.0 * (BETA + 90) / (BETA + hottestC);
        return BigDecimal.valueOf(amps * StrictMath.sqrt(StrictMath.max(warmer, 0)))
                .setScale(0, RoundingMode.HALF_UP);
    }

    /**
     * I = 22.9 S^0.644 goes within 4 % through what IEC 60364-5-52 has for single cores with 90 °C, spaced in free air of 30 °C
     * (table B.52.12, method G, from memory); heat given off grows with what copper is warmer than air (IEC 60287-1-1, from memory). No
     * cable of a vehicle lies better, so that what is above is a slip; what is below is for whoever knows how it lies.
     */
    private static Optional<Remark> current(Family family, PowerCable cable) {
        BigDecimal most = mostAmps(cable.areaMm2(), cable.hottestC());
        return found(
                family,
                cable,
                cable.amps().compareTo(most) <= 0,
                Digits.plain(cable.amps()) + " A",
                "at most " + Digits.plain(most) + " A: a single core of " + Digits.plain(cable.areaMm2())
                        + " mm² alone in air of 30 °C, its copper at " + cable.hottestC()
                        + " °C (workshop's own value, check before use)");
    }

    /** The factor k in A √s / mm² of copper that is heated from that temperature to 250 °C (IEC 60364-5-54, annex A; from memory) */
    static BigDecimal mostK(int hottestC) {
        double k = 226 * StrictMath.sqrt(StrictMath.log((BETA + HOTTEST_SHORTED) / (BETA + hottestC)));
        return BigDecimal.valueOf(k).setScale(0, RoundingMode.HALF_UP);
    }

    private static Optional<Remark> heat(Family family, PowerCable cable) {
        boolean cold = cable.hottestC() < HOTTEST_SHORTED;
        BigDecimal most = cold ? mostK(cable.hottestC()) : BigDecimal.ZERO;
        return found(
                family,
                cable,
                cable.kFactor().compareTo(most) <= 0,
                "'kFactor' " + Digits.plain(cable.kFactor()),
                "at most " + Digits.plain(most) + ": copper heated from " + cable.hottestC()
                        + " to 250 °C (workshop's own value, check before use)");
    }

    private static Optional<Remark> found(
            Family family, PowerCable cable, boolean holds, String found, String expected) {
        return holds
                ? Optional.empty()
                : Optional.of(new Remark(
                        "cable " + family.name() + "/" + cable.part(),
                        Check.CABLE_FACTS,
                        found + " for " + Digits.plain(cable.areaMm2()) + " mm²",
                        expected,
                        "Take area, resistance and current from the maker's data sheet for how the cable lies"));
    }

    /** One number, one meaning: a cable that two families have is the same cable. */
    private static Stream<Remark> unlike(Catalogue catalogue) {
        Map<String, PowerCable> first = new TreeMap<>();
        return catalogue.families().values().stream()
                .flatMap(family -> family.electrics().cables().stream().flatMap(cable -> {
                    PowerCable known = first.putIfAbsent(cable.part().text(), cable);
                    return known == null || known.equals(cable)
                            ? Stream.empty()
                            : Stream.of(new Remark(
                                    "cable " + family.name() + "/" + cable.part(),
                                    Check.CABLE_FACTS,
                                    "other figures than in another family",
                                    "the same: one cable has one area, resistance and current",
                                    "Take them from the maker's data sheet; where it lies otherwise, use 'derating' of"
                                            + " the branch"));
                }));
    }
}

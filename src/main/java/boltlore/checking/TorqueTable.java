package boltlore.checking;

import boltlore.catalogue.Fixing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Tightening torques in Nm of property class 8.8 at 90 % of yield, after VDI 2230. Fine threads: a published tightening
 * table (mastik.pt, p. 685). Coarse threads: the same table from memory; its formula gives the same values.
 */
final class TorqueTable {

    private record Entry(String thread, BigDecimal friction, BigDecimal torqueNm) {}

    private static final String PROPERTY_CLASS = "8.8";

    private static final List<Entry> ENTRIES = List.of(
            entry("M8x1", "0.10", "22.8"),
            entry("M8x1", "0.12", "26.1"),
            entry("M8x1", "0.14", "29.2"),
            entry("M10x1.25", "0.10", "44"),
            entry("M10x1.25", "0.12", "51"),
            entry("M10x1.25", "0.14", "57"),
            entry("M12x1.25", "0.10", "79"),
            entry("M12x1.25", "0.12", "90"),
            entry("M12x1.25", "0.14", "101"),
            entry("M6", "0.10", "9.0"),
            entry("M6", "0.12", "10.1"),
            entry("M6", "0.14", "11.3"),
            entry("M8", "0.10", "21.6"),
            entry("M8", "0.12", "24.6"),
            entry("M8", "0.14", "27.3"),
            entry("M10", "0.10", "43"),
            entry("M10", "0.12", "48"),
            entry("M10", "0.14", "54"),
            entry("M12", "0.10", "73"),
            entry("M12", "0.12", "84"),
            entry("M12", "0.14", "93"));

    private TorqueTable() {}

    private static Entry entry(String thread, String friction, String torqueNm) {
        return new Entry(thread, new BigDecimal(friction), new BigDecimal(torqueNm));
    }

    /** The table's torque for the fixing; for a friction that the table has not, the largest for its thread. */
    static Optional<BigDecimal> torqueNm(Fixing fixing) {
        if (!PROPERTY_CLASS.equals(fixing.propertyClass())) {
            return Optional.empty();
        }
        List<Entry> ofThread = ENTRIES.stream()
                .filter(entry -> entry.thread().equals(fixing.thread()))
                .toList();
        BigDecimal friction = fixing.friction();
        return ofThread.stream()
                .filter(entry -> friction != null && entry.friction().compareTo(friction) == 0)
                .map(Entry::torqueNm)
                .findFirst()
                .or(() -> ofThread.stream().map(Entry::torqueNm).max(BigDecimal::compareTo));
    }
}

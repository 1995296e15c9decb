package boltlore.checking;

import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Family;
import boltlore.catalogue.Outlet;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Whether the limits that electrics.json is held against are themselves no wider than standards or common practice have them,
 * and whether capacitors are of a size that is built into vehicles: with a slip there everything else keeps its limits.
 */
final class ElectricLimitsUsual {

    /** Energy that may stay on what people touch, in J (ISO 6469-3, UN Regulation 100; from memory). */
    private static final BigDecimal Y_JOULE = new BigDecimal("0.2");

    /** Of a drop of voltage, in %: IEC 60364-5-52, annex G, for other uses than lighting from a public network; from memory. */
    private static final BigDecimal DROP_PERCENT = BigDecimal.valueOf(5);

    /** Between a battery and the first fuse, in mm: common practice, no source. */
    private static final BigDecimal UNFUSED_MM = BigDecimal.valueOf(1_000);

    /** At 30 mA, in ms (IEC 61008-1 and 61009-1, table of break times at the rated residual current; from memory). */
    private static final int SLOWEST_MS = 300;

    /** Between the poles of one device, in µF, and to the chassis, in nF: common practice, no source. */
    private static final BigDecimal LEAST_MICROFARAD = BigDecimal.ONE;

    private static final BigDecimal MOST_MICROFARAD = BigDecimal.valueOf(5_000);
    private static final BigDecimal MOST_NANOFARAD = BigDecimal.valueOf(2_000);

    private final Family family;
    private final List<Remark> found = new ArrayList<>();

    private ElectricLimitsUsual(Family family) {
        this.family = family;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> new ElectricLimitsUsual(family).all());
    }

    private Stream<Remark> all() {
        ElectricLimits limits = family.electrics().limits();
        if (limits != null) {
            atMost(
                    "limits",
                    "yJoule",
                    limits.yJoule(),
                    Y_JOULE,
                    "J on what people may touch (workshop's own value, check before use)");
            atMost("limits", "dropPercent", limits.dropPercent(), DROP_PERCENT, "% (common practice)");
            BigDecimal unfused = limits.unfusedMm() == null ? null : BigDecimal.valueOf(limits.unfusedMm());
            atMost(
                    "limits",
                    "unfusedMm",
                    unfused,
                    UNFUSED_MM,
                    "mm from what feeds a cable to its fuse (common practice)");
        }
        family.electrics().outlets().forEach(this::outlet);
        family.electrics().capacitors().forEach(this::capacitor);
        return found.stream();
    }

    private void outlet(Outlet outlet) {
        atMost(
                "outlet",
                "withinMilliseconds",
                BigDecimal.valueOf(outlet.withinMilliseconds()),
                BigDecimal.valueOf(SLOWEST_MS),
                "ms at its residual current (workshop's own value, check before use)");
    }

    private void capacitor(Capacitor capacitor) {
        String about = "capacitor " + capacitor.name();
        atMost(about, "microfarad", capacitor.microfarad(), MOST_MICROFARAD, "µF between the poles of one device");
        atMost(about, "yNanofarad", capacitor.yNanofarad(), MOST_NANOFARAD, "nF from one device to the chassis");
        if (capacitor.microfarad().compareTo(LEAST_MICROFARAD) < 0) {
            add(
                    about,
                    "'microfarad' " + Digits.plain(capacitor.microfarad()),
                    "at least " + LEAST_MICROFARAD + " µF between the poles of one device (common practice)");
        }
    }

    private void atMost(String about, String key, @Nullable BigDecimal figure, BigDecimal most, String unit) {
        if (figure != null && figure.compareTo(most) > 0) {
            add(about, "'" + key + "' " + Digits.plain(figure), "at most " + Digits.plain(most) + " " + unit);
        }
    }

    private void add(String about, String what, String expected) {
        found.add(new Remark(
                "electrics " + family.name() + "/" + about,
                Check.LIMIT_WIDE,
                what,
                expected,
                "Check unit and figure; what is really so needs the judgement of an electrically qualified person"));
    }
}

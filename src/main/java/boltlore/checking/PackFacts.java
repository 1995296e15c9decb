package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Pack;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether voltages, resistance, energy and currents of a battery pack can be those of lithium cells, and whether packs of the
 * same modules follow from how many lie in series and side by side. Largest current of the drive, short circuit and fuses
 * are worked out from them.
 */
final class PackFacts {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What two packs of the same modules may differ by: makers round. Common practice, no source. */
    private static final BigDecimal ROUNDED = new BigDecimal("0.1");

    private record Of(Family family, Pack pack) {}

    private PackFacts() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        List<Of> all = catalogue.families().values().stream()
                .flatMap(family -> family.electrics().packs().stream().map(pack -> new Of(family, pack)))
                .toList();
        return Stream.concat(all.stream().flatMap(PackFacts::alone), beside(all));
    }

    private static Stream<Remark> alone(Of of) {
        Pack pack = of.pack();
        BigDecimal nominal = pack.nominalVolts();
        BigDecimal ampHours = pack.moduleAmpHours().multiply(BigDecimal.valueOf(pack.inParallel()));
        List<Remark> found = new ArrayList<>();
        // Lithium cells: 2.3 V nominal go from 1.5 to 2.8 V, 3.2 V from 2.5 to 3.65 V, 3.7 V from 2.7 to 4.2 V; with a
        // margin.
        within(found, of, "highestVolts", pack.highestVolts(), nominal, "105", "125", "% of the nominal voltage");
        within(found, of, "lowestVolts", pack.lowestVolts(), nominal, "60", "97", "% of the nominal voltage");
        within(found, of, "usableKwh", pack.usableKwh(), pack.nominalKwh(), "70", "100", "% of the nominal energy");
        // What it loses at the current that empties it in an hour: cells for energy lose more than cells for power.
        within(
                found,
                of,
                "resistanceMilliohm",
                pack.resistanceMilliohm().movePointLeft(3).multiply(ampHours),
                nominal,
                "0.3",
                "12",
                "% of the nominal voltage at one hour's current");
        within(found, of, "chargeAmps", pack.chargeAmps(), ampHours, "10", "600", "% of one hour's current");
        within(found, of, "continuousAmps", pack.continuousAmps(), ampHours, "20", "1000", "% of one hour's current");
        within(found, of, "peakAmps", pack.peakAmps(), ampHours, "20", "3000", "% of one hour's current");
        return found.stream();
    }

    /** Bounds by common practice, no source. */
    private static void within(
            List<Remark> found,
            Of of,
            String key,
            BigDecimal figure,
            BigDecimal whole,
            String least,
            String most,
            String percent) {
        BigDecimal share = figure.multiply(HUNDRED).divide(whole, MathContext.DECIMAL32);
        if (share.compareTo(new BigDecimal(least)) < 0 || share.compareTo(new BigDecimal(most)) > 0) {
            found.add(remark(
                    of,
                    "'" + key + "' at " + Digits.upTo(share, 2) + " " + percent,
                    "from " + least + " to " + most + " %, as lithium cells have it (common practice)"));
        }
    }

    private static Stream<Remark> beside(List<Of> all) {
        return all.stream()
                .flatMap(one -> all.stream()
                        .skip(all.indexOf(one) + 1L)
                        .filter(other -> other.pack().module().equals(one.pack().module()))
                        .flatMap(other -> beside(one, other)));
    }

    private static Stream<Remark> beside(Of one, Of other) {
        List<Remark> found = new ArrayList<>();
        same(found, one, other, "moduleVolts", Pack::moduleVolts);
        same(found, one, other, "moduleAmpHours", Pack::moduleAmpHours);
        same(found, one, other, "highestVolts", pack -> each(pack.highestVolts(), pack.inSeries()));
        same(found, one, other, "lowestVolts", pack -> each(pack.lowestVolts(), pack.inSeries()));
        same(
                found,
                one,
                other,
                "resistanceMilliohm",
                pack -> each(pack.resistanceMilliohm(), pack.inSeries())
                        .multiply(BigDecimal.valueOf(pack.inParallel())));
        same(found, one, other, "usableKwh", pack -> each(pack.usableKwh(), pack.inSeries() * pack.inParallel()));
        same(found, one, other, "chargeAmps", pack -> each(pack.chargeAmps(), pack.inParallel()));
        same(found, one, other, "continuousAmps", pack -> each(pack.continuousAmps(), pack.inParallel()));
        same(found, one, other, "peakAmps", pack -> each(pack.peakAmps(), pack.inParallel()));
        return found.stream();
    }

    private static BigDecimal each(BigDecimal whole, int many) {
        return whole.divide(BigDecimal.valueOf(many), MathContext.DECIMAL32);
    }

    /** Cells in series add their volts and ohms, strings side by side their amperes (Kirchhoff's laws). */
    private static void same(List<Remark> found, Of one, Of other, String key, Function<Pack, BigDecimal> each) {
        BigDecimal here = each.apply(one.pack());
        BigDecimal there = each.apply(other.pack());
        if (here.subtract(there).abs().compareTo(here.min(there).multiply(ROUNDED)) > 0) {
            found.add(remark(
                    other,
                    "'" + key + "' that comes to " + Digits.upTo(there, 2) + " for each module or string",
                    Digits.upTo(here, 2) + ", as pack " + one.family().name() + "/"
                            + one.pack().name() + " of the same modules has it, to 10 %"));
        }
    }

    private static Remark remark(Of of, String found, String expected) {
        return new Remark(
                "pack " + of.family().name() + "/" + of.pack().name(),
                Check.PACK_FACTS,
                found,
                expected,
                "Take it from the module's data sheet, and work it out for modules in series and strings side by side");
    }
}

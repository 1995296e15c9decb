package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The parts of one vehicle: what is cut to a dimension that was measured on it has that length, and its mass in proportion. Cost
 * and coated area stay those of the usual length, because nobody prices by the millimetre.
 */
final class MeasuredParts {

    private final Map<String, BigDecimal> dimensions = new LinkedHashMap<>();

    private MeasuredParts(Family family, Map<String, BigDecimal> measuredMm) {
        family.measures()
                .forEach(measure ->
                        dimensions.put(measure.name(), measuredMm.getOrDefault(measure.name(), measure.usualMm())));
    }

    /** Dimensions that are not measured are taken as usual. */
    static Map<PartNumber, Part> of(Map<PartNumber, Part> parts, Family family, Map<String, BigDecimal> measuredMm) {
        MeasuredParts measured = new MeasuredParts(family, measuredMm);
        Map<PartNumber, Part> all = new LinkedHashMap<>();
        parts.forEach((number, part) -> all.put(number, measured.of(part)));
        return all;
    }

    private Part of(Part part) {
        List<Cut> cuts = part.making().cuts().stream().map(this::of).toList();
        if (cuts.equals(part.making().cuts())) {
            return part;
        }
        BigDecimal massKg = part.massKg();
        return part.cutTo(
                cuts,
                massKg == null
                        ? null
                        : massKg.multiply(sum(cuts)).divide(sum(part.making().cuts()), MathContext.DECIMAL64));
    }

    private Cut of(Cut cut) {
        Cut.Measured measured = cut.measured();
        if (measured == null || !dimensions.containsKey(measured.measure())) {
            return cut;
        }
        BigDecimal lengthMm = measured.lengthMm(Objects.requireNonNull(dimensions.get(measured.measure())));
        return lengthMm.compareTo(cut.lengthMm()) == 0
                ? cut
                : new Cut(cut.material(), lengthMm, cut.count(), cut.endAngles(), measured);
    }

    private static BigDecimal sum(List<Cut> cuts) {
        return cuts.stream()
                .map(cut -> cut.lengthMm().multiply(BigDecimal.valueOf(cut.count())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Family;
import boltlore.catalogue.Material;
import boltlore.catalogue.Measure;
import boltlore.catalogue.Part;
import boltlore.faults.Nearest;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What is cut to a measured dimension can be cut in every family that brings it, whatever is measured there. */
final class MeasuresCheck {

    private final Catalogue catalogue;
    private final Reading reading;

    MeasuresCheck(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    /** Of one part by itself: all its pieces are of one bar, so that its mass goes with their length. */
    void parts() {
        for (Part part : catalogue.parts().values()) {
            Set<String> materials =
                    part.making().cuts().stream().map(Cut::material).collect(Collectors.toSet());
            part.making().cuts().stream()
                    .filter(cut -> cut.measured() != null && (materials.size() > 1 || part.isAssembly()))
                    .findFirst()
                    .ifPresent(cut -> fault(
                            cut,
                            "a measured length on "
                                    + (part.isAssembly() ? "an assembly" : "a part of several materials"),
                            "a leaf cut from one material, whose mass goes with its length",
                            "Make a part of its own of each piece."));
        }
    }

    /** @param reach parts that some line of the family brings */
    void check(Family family, Set<PartNumber> reach) {
        for (Part part : catalogue.parts().values()) {
            if (reach.contains(part.number())) {
                part.making().cuts().stream()
                        .filter(cut -> cut.measured() != null)
                        .forEach(cut -> check(cut, family));
            }
        }
    }

    private void check(Cut cut, Family family) {
        Cut.Measured measured = Objects.requireNonNull(cut.measured());
        Optional<Measure> known = family.measures().stream()
                .filter(measure -> measure.name().equals(measured.measure()))
                .findFirst();
        if (known.isEmpty()) {
            List<String> names = family.measures().stream().map(Measure::name).toList();
            fault(
                    cut,
                    "'" + measured.measure() + "', which family '" + family.name() + "' does not measure",
                    "a dimension under 'measured' of each family that brings the part",
                    Nearest.advice(measured.measure(), names, "Add it to that family."));
            return;
        }
        Measure measure = known.get();
        BigDecimal usual = measured.lengthMm(measure.usualMm());
        if (cut.lengthMm().compareTo(usual) != 0) {
            fault(
                    cut,
                    "'lengthMm' " + cut.lengthMm().toPlainString(),
                    usual.toPlainString() + " mm, which comes of the usual "
                            + measure.usualMm().toPlainString() + " mm of '" + measure.name() + "' in family '"
                            + family.name() + "'",
                    "Let 'lengthMm' be the length for the usual dimension.");
        }
        ends(cut, measured, measure);
    }

    private void ends(Cut cut, Cut.Measured measured, Measure measure) {
        BigDecimal least = measured.lengthMm(measure.fromMm());
        BigDecimal most = measured.lengthMm(measure.toMm());
        Material material = catalogue.materials().get(cut.material());
        if (least.min(most).signum() <= 0) {
            fault(
                    cut,
                    "a piece of " + least.min(most).toPlainString() + " mm at an end of its range",
                    "above 0 mm",
                    "");
        } else if (material != null
                && material.bars() != null
                && least.max(most).compareTo(material.bars().longestPieceMm()) > 0) {
            fault(
                    cut,
                    "a piece of " + least.max(most).toPlainString() + " mm at an end of its range",
                    "at most " + material.bars().longestPieceMm().toPlainString() + " mm, which the longest bar gives",
                    "Buy longer bars, or narrow the range.");
        }
    }

    private void fault(Cut cut, String found, String expected, String advice) {
        reading.faults().add(reading.sources().of(cut).fault(found, expected, advice));
    }
}

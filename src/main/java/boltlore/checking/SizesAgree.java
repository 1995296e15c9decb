package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A part goes into itself as it is packed, a shaft by its length, and what is clear inside a box goes into the box. */
final class SizesAgree {

    private SizesAgree() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return Stream.concat(
                catalogue.parts().values().stream().flatMap(part -> of(catalogue, part).stream()),
                catalogue.families().values().stream()
                        .flatMap(family -> family.fits().shafts().stream()
                                .flatMap(shaft -> family.position(shaft.position()).stream()
                                        .flatMap(position -> position.lines().stream())
                                        .map(line -> catalogue.part(line.part()))
                                        .flatMap(part -> shaft(catalogue, shaft, part).stream()))));
    }

    /** A shaft is packed as long as it is, give or take what it slides; a cable is coiled. */
    private static Optional<Remark> shaft(Catalogue catalogue, Fits.Shaft shaft, Part part) {
        EnvelopeMm packed = catalogue.shipping().sizes().get(part.number());
        Integer lengthMm = part.lengthMm();
        if (packed == null || lengthMm == null || Math.abs(packed.length() - lengthMm) <= shaft.slideMm()) {
            return Optional.empty();
        }
        return Optional.of(new Remark(
                Said.part(part),
                Check.SIZE,
                "'lengthMm' of " + lengthMm + " mm",
                "the length as packed in shipping.json, " + said(packed) + ", give or take the " + shaft.slideMm()
                        + " mm that it slides",
                "Correct one of the two"));
    }

    private static List<Remark> of(Catalogue catalogue, Part part) {
        EnvelopeMm own = part.geometry().size();
        EnvelopeMm inner = part.geometry().inner();
        EnvelopeMm packed = catalogue.shipping().sizes().get(part.number());
        EnvelopeMm coated = part.coat() == null ? null : part.coat().envelope();
        List<Remark> remarks = new ArrayList<>();
        compare(remarks, part, own, "'sizeMm'", packed, "the size as packed in shipping.json");
        compare(remarks, part, inner, "'innerMm'", own, "'sizeMm'");
        compare(remarks, part, inner, "'innerMm'", coated, "'envelopeMm' of its coat");
        return remarks;
    }

    private static void compare(
            List<Remark> remarks,
            Part part,
            @Nullable EnvelopeMm small,
            String called,
            @Nullable EnvelopeMm large,
            String within) {
        if (small != null && large != null && !small.goesInto(large)) {
            remarks.add(new Remark(
                    Said.part(part),
                    Check.SIZE,
                    called + " of " + said(small),
                    "no more than " + within + ", " + said(large),
                    "Correct one of the two"));
        }
    }

    private static String said(EnvelopeMm size) {
        return size.length() + " × " + size.width() + " × " + size.height() + " mm";
    }
}

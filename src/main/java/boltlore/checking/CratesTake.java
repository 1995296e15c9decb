package boltlore.checking;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CrateType;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.trades.shipping.Fits;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What is handed out goes into some crate, and batteries say as what they travel. */
final class CratesTake {

    private static final Pattern MARK = Pattern.compile("/([XYZ])([0-9]+(?:\\.[0-9])?)(?:/|$)");

    private CratesTake() {}

    /** Nothing where the workshop says nothing about crates. */
    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.shipping().crates().isEmpty()
                ? Stream.of()
                : Stream.concat(
                                catalogue.parts().values().stream()
                                        .filter(Part::pickedWhole)
                                        .flatMap(part -> Stream.of(crate(part, catalogue), battery(part, catalogue))),
                                catalogue.shipping().crates().stream().map(CratesTake::mark))
                        .flatMap(Optional::stream);
    }

    /**
     * The mark of approved packaging: letter of the packing group (lithium needs X or Y) and the largest gross mass in kg for
     * solids (UN Model Regulations and ADR 2025, 6.1.3.1; from memory).
     */
    private static Optional<Remark> mark(CrateType crate) {
        Matcher mark = MARK.matcher(crate.unMark());
        if (!mark.find()) {
            return Optional.empty();
        }
        BigDecimal marked = new BigDecimal(mark.group(2));
        boolean group = mark.group(1).equals("Z");
        boolean heavy = crate.mostGrossKg().compareTo(marked) > 0;
        return group || heavy
                ? Optional.of(new Remark(
                        "crate " + crate.name(),
                        Check.CRATE_MARK,
                        group
                                ? "'" + crate.unMark() + "', which is for packing group III"
                                : "'maxGrossKg' " + Digits.plain(crate.mostGrossKg()),
                        group
                                ? "a mark with X or Y, as lithium batteries need it"
                                : "at most " + Digits.plain(marked) + " kg, as its mark '" + crate.unMark() + "' says",
                        "Read the mark on the crate itself: packed above it, nobody may send it"))
                : Optional.empty();
    }

    private static Optional<Remark> crate(Part part, Catalogue catalogue) {
        return Fits.someCrate(part, catalogue)
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.part(part),
                        Check.CRATE,
                        Said.kg(Masses.eachKg(part, catalogue::part)) + " that no crate takes",
                        "one that goes into a crate of shipping.json that is meant for it",
                        "Check its mass and size, and the crates"));
    }

    private static Optional<Remark> battery(Part part, Catalogue catalogue) {
        return Fits.unmarkedBattery(part, catalogue)
                ? Optional.of(new Remark(
                        Said.part(part),
                        Check.UN_NUMBER,
                        "the customs code of a battery and no UN number",
                        "'transport' as its safety data sheet says",
                        "Add it, so that it is packed apart"))
                : Optional.empty();
    }
}

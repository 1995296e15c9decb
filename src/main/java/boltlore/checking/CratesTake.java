package boltlore.checking;

import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.trades.shipping.Fits;
import java.util.Optional;
import java.util.stream.Stream;

/** What is handed out goes into some crate, and batteries say as what they travel. */
final class CratesTake {

    private CratesTake() {}

    /** Nothing where the workshop says nothing about crates. */
    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.shipping().crates().isEmpty()
                ? Stream.of()
                : catalogue.parts().values().stream()
                        .filter(Part::pickedWhole)
                        .flatMap(part -> Stream.of(crate(part, catalogue), battery(part, catalogue)))
                        .flatMap(Optional::stream);
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

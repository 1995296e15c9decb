package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.PowderCoat;
import java.util.stream.Stream;

/** What is coated can be hung, and each coat has a film and a cure that a booth and an oven can keep. */
final class CoatingGiven {

    /**
     * Metal temperatures and times within which powders for metal cure, low-bake ones to primers of pipes. Common practice, no
     * source.
     */
    private static final int COOLEST_C = 140;

    private static final int HOTTEST_C = 230;
    private static final int SHORTEST_MIN = 4;
    private static final int LONGEST_MIN = 45;

    private CoatingGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return Stream.concat(
                catalogue.parts().values().stream().flatMap(CoatingGiven::hanging),
                catalogue.finishes().values().stream()
                        .flatMap(finish -> finish.coats().stream()
                                .flatMap(coat -> Stream.of(
                                                film(finish, coat), cure(finish, coat), twice(catalogue, finish, coat))
                                        .flatMap(remarks -> remarks))));
    }

    /** A powder cures one way, whatever finish it is part of. */
    private static Stream<Remark> twice(Catalogue catalogue, Finish finish, PowderCoat coat) {
        return catalogue.finishes().values().stream()
                .filter(other -> other.name().compareTo(finish.name()) < 0)
                .flatMap(other -> other.coats().stream()
                        .filter(same -> same.powder().equals(coat.powder()))
                        .filter(same -> same.cureMetalC() != coat.cureMetalC()
                                || same.cureMinutes() != coat.cureMinutes()
                                || same.specificGravity().compareTo(coat.specificGravity()) != 0)
                        .map(same -> new Remark(
                                "finish " + finish.name(),
                                Check.CURE,
                                said(coat),
                                said(same) + ", as finish " + other.name() + " has it",
                                "Check the powder's data sheet, and correct one of them")));
    }

    private static String said(PowderCoat coat) {
        return coat.powder() + ": " + coat.cureMinutes() + " min at " + coat.cureMetalC() + " °C, specific gravity "
                + coat.specificGravity().toPlainString();
    }

    private static Stream<Remark> hanging(Part part) {
        return part.coat() == null || part.coat().hangPoints() > 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.HANG_POINTS,
                        "no hang point",
                        "at least one for a coated part",
                        "Say by which hole or edge it hangs in the oven"));
    }

    private static Stream<Remark> film(Finish finish, PowderCoat coat) {
        boolean inOrder = 0 < coat.filmMinUm()
                && coat.filmMinUm() <= coat.filmTargetUm()
                && coat.filmTargetUm() <= coat.filmMaxUm();
        return inOrder ? Stream.empty() : Stream.of(filmOutOfOrder(finish, coat));
    }

    private static Remark filmOutOfOrder(Finish finish, PowderCoat coat) {
        return new Remark(
                "finish " + finish.name(),
                Check.FILM,
                coat.powder() + ": least " + coat.filmMinUm() + ", target " + coat.filmTargetUm() + ", most "
                        + coat.filmMaxUm() + " µm",
                "more than 0, then no less than the one before",
                "Check the powder's data sheet");
    }

    private static Stream<Remark> cure(Finish finish, PowderCoat coat) {
        boolean within = coat.cureMetalC() >= COOLEST_C
                && coat.cureMetalC() <= HOTTEST_C
                && coat.cureMinutes() >= SHORTEST_MIN
                && coat.cureMinutes() <= LONGEST_MIN;
        return within
                ? Stream.empty()
                : Stream.of(new Remark(
                        "finish " + finish.name(),
                        Check.CURE,
                        coat.powder() + ": " + coat.cureMinutes() + " min at " + coat.cureMetalC() + " °C",
                        SHORTEST_MIN + " to " + LONGEST_MIN + " min at " + COOLEST_C + " to " + HOTTEST_C
                                + " °C of the metal",
                        "Check the powder's data sheet"));
    }
}

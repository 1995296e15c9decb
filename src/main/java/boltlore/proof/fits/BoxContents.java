package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A box that does not take what lies in it, side by side in a grid, all turned one way, in layers. Contents that only fit
 * turned against one another are told too: nobody lays them so.
 */
final class BoxContents {

    private BoxContents() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Fits.Box box : kit.family().fits().boxes()) {
            for (Line outside : kit.kit().position(box.position()).lines()) {
                for (Line inside : kit.kit().position(box.holds()).lines()) {
                    Condition together =
                            All.of(kit.kit().in(outside.name()), kit.kit().in(inside.name()));
                    if (!together.equals(Any.NEVER)) {
                        all.add(laid(kit, box, outside, inside, together));
                    }
                }
            }
        }
        return all;
    }

    private static FitFinding.Possible laid(KitView kit, Fits.Box box, Line outside, Line inside, Condition together) {
        EnvelopeMm room = kit.catalogue().part(outside.part()).geometry().inner();
        EnvelopeMm each = kit.catalogue().part(inside.part()).geometry().size();
        long fits = room == null || each == null ? 0 : fits(box, room, each);
        boolean known = room != null && each != null;
        return (known ? FitFinding.CONTENTS_DO_NOT_FIT : FitFinding.CONTENTS_OF_UNKNOWN_SIZE)
                .when(
                        known && BigDecimal.valueOf(fits).compareTo(inside.quantity()) >= 0 ? Any.NEVER : together,
                        outside.name().text(),
                        inside.name().text(),
                        List.of(outside.name(), inside.name()),
                        "many",
                        new BigDecimal(Digits.plain(inside.quantity())),
                        "inside",
                        named(kit, inside.part()),
                        "outside",
                        named(kit, outside.part()),
                        "fits",
                        fits);
    }

    /** What people call the part, and its number. */
    static Wording named(KitView kit, PartNumber part) {
        return kit.catalogue().part(part).name().with(" (" + part + ")");
    }

    /** The most that lie in it, over the ways in which they may be turned. */
    static long fits(Fits.Box box, EnvelopeMm room, EnvelopeMm each) {
        int[] sides = {each.length(), each.width(), each.height()};
        long most = 0;
        for (int up = box.upright() ? 2 : 0; up < sides.length; up++) {
            int along = sides[(up + 1) % sides.length];
            int across = sides[(up + 2) % sides.length];
            most = Math.max(most, grid(box, room, along, across, sides[up]));
            most = Math.max(most, grid(box, room, across, along, sides[up]));
        }
        return most;
    }

    private static long grid(Fits.Box box, EnvelopeMm room, int along, int across, int up) {
        long layers = Math.min(box.layers(), room.height() / (up + box.layerMm()));
        return layers * inRow(room.length(), along, box.gapMm()) * inRow(room.width(), across, box.gapMm());
    }

    /** So many with a gap on both sides of each. */
    private static long inRow(int roomMm, int eachMm, int gapMm) {
        return Math.max(0, (roomMm - gapMm) / (eachMm + gapMm));
    }
}

package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Line;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A box that does not take what lies in it, side by side in a grid, all turned one way, in layers. Contents that only fit
 * turned against one another are told too: nobody lays them so.
 */
final class BoxContents {

    private BoxContents() {}

    static List<PossibleFinding> findings(KitView kit) {
        List<PossibleFinding> all = new ArrayList<>();
        for (Fits.Box box : kit.family().fits().boxes()) {
            for (Line outside : kit.kit().position(box.position()).lines()) {
                for (Line inside : kit.kit().position(box.holds()).lines()) {
                    Condition together =
                            All.of(kit.kit().in(outside.name()), kit.kit().in(inside.name()));
                    String most = most(kit, box, outside, inside);
                    if (!together.equals(Any.NEVER)) {
                        all.add(PossibleFinding.of(
                                outside.name().text(),
                                inside.name().text(),
                                most.isEmpty() ? Any.NEVER : together,
                                List.of(outside.name(), inside.name()),
                                "A valid order lays " + Digits.plain(inside.quantity()) + " of " + inside.part()
                                        + " in " + outside.part() + ", " + most + "."));
                    }
                }
            }
        }
        return all;
    }

    /** Why they do not fit; empty where they do. */
    private static String most(KitView kit, Fits.Box box, Line outside, Line inside) {
        EnvelopeMm room = kit.catalogue().part(outside.part()).geometry().inner();
        EnvelopeMm each = kit.catalogue().part(inside.part()).geometry().size();
        if (room == null || each == null) {
            return room == null ? "of which the inner size is not known" : "and their size is not known";
        }
        long fits = fits(box, room, each);
        return BigDecimal.valueOf(fits).compareTo(inside.quantity()) >= 0 ? "" : "which takes " + fits;
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

package boltlore.trades.cutting;

import boltlore.catalogue.Cut;
import boltlore.catalogue.Part;
import java.util.List;

/**
 * All pieces that one part needs from one material. They come off one bar, so that no part mixes two heats.
 *
 * @param number which of the order's parts of that number it is, from 1
 * @param cuts as the part has them, each with its count
 */
public record PieceSet(String order, Part part, int number, List<Cut> cuts) {

    public PieceSet {
        cuts = List.copyOf(cuts);
    }

    /** As it is written on the piece: 'BL-1001 PV-CR-TB-E 2'. */
    public String mark() {
        return order + " " + part.number() + " " + number;
    }
}

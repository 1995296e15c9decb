package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.util.Map;

/** How many of a part are made with one set-up. */
public record Lots(int usual, Map<PartNumber, Integer> byPart) {

    public int of(PartNumber part) {
        return byPart.getOrDefault(part, usual);
    }
}

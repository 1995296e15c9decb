package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import org.jspecify.annotations.Nullable;

/**
 * One way in which a part comes into kits.
 *
 * @param line the line that brings or needs it, or null where a part does
 * @param asker the part that contains or needs it, or null where a line does
 * @param when it does, as a condition over options alone
 */
public record Bringing(
        How how, @Nullable LineName line, @Nullable PartNumber asker, PartNumber part, Condition when) {

    public enum How {
        LINE,
        CONTAINS,
        NEEDS
    }
}

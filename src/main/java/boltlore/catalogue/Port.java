package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A high-voltage connector: the parts that mate with it, and the blank that closes it where none does. */
public record Port(
        String name,
        String kind,
        List<PartNumber> mates,
        @Nullable PartNumber blank) {}

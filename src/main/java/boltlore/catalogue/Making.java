package boltlore.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** How a part is made: drawing, sheet or plate material, pieces to cut, operations in order. */
public record Making(@Nullable Drawing drawing, @Nullable String material, List<Cut> cuts, List<Operation> operations) {

    public static final Making NONE = new Making(null, null, List.of(), List.of());
}

package boltlore.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** How a part is made: drawing, sheet or plate material and its blank, pieces to cut, operations in order. */
public record Making(
        @Nullable Drawing drawing,
        @Nullable String material,
        @Nullable Blank blank,
        List<Cut> cuts,
        List<Operation> operations) {

    public static final Making NONE = new Making(null, null, List.of(), List.of());

    /** Without a blank. */
    public Making(@Nullable Drawing drawing, @Nullable String material, List<Cut> cuts, List<Operation> operations) {
        this(drawing, material, null, cuts, operations);
    }

    Making cutTo(List<Cut> others) {
        return new Making(drawing, material, blank, others, operations);
    }
}

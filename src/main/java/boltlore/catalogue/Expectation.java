package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;

/** Something that must be in the kit beside its asker; it is checked, never brought. */
public record Expectation(Target target, BigDecimal atLeast, Condition when, String because) {

    public sealed interface Target {
        String name();
    }

    public record OfPart(PartNumber part) implements Target {
        @Override
        public String name() {
            return part.text();
        }
    }

    public record OfPosition(PositionName position) implements Target {
        @Override
        public String name() {
            return position.text();
        }
    }
}

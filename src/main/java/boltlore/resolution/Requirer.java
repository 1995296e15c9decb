package boltlore.resolution;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;

/** What brings a part: a line of the kit, or another part. */
public sealed interface Requirer extends Comparable<Requirer> {

    String name();

    record OfLine(LineName line) implements Requirer {
        @Override
        public String name() {
            return line.text();
        }
    }

    record OfPart(PartNumber part) implements Requirer {
        @Override
        public String name() {
            return part.text();
        }
    }

    @Override
    default int compareTo(Requirer other) {
        int byKind = Boolean.compare(this instanceof OfPart, other instanceof OfPart);
        return byKind != 0 ? byKind : name().compareTo(other.name());
    }
}

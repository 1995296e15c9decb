package boltlore.resolution.rules;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.resolution.Asker;

/** Names in short words. */
final class Named {

    private Named() {}

    static LineName line(String name) {
        return new LineName(name);
    }

    static PositionName position(String name) {
        return new PositionName(name);
    }

    static PartNumber part(String number) {
        return new PartNumber(number);
    }

    static Asker byLine(String name) {
        return new Asker.OfLine(line(name));
    }

    static Asker byPart(String number) {
        return new Asker.OfPart(part(number));
    }
}

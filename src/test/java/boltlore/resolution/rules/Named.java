package boltlore.resolution.rules;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.resolution.Requirer;

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

    static Requirer byLine(String name) {
        return new Requirer.OfLine(line(name));
    }

    static Requirer byPart(String number) {
        return new Requirer.OfPart(part(number));
    }
}

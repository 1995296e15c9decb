package boltlore.order.json;

import boltlore.faults.Nearest;
import boltlore.json.Faults;
import boltlore.json.SourceLocation;
import java.util.Collection;

/** Names on an order against the names in the catalogue. */
final class Known {

    private static final int FEW = 12;

    private Known() {}

    /** Whether the name is one of those; a fault with the nearest one where it is not. */
    static boolean check(String name, SourceLocation location, Collection<String> known, String what, Faults faults) {
        if (known.contains(name)) {
            return true;
        }
        String all = known.isEmpty() ? "There are none." : "Known: " + String.join(", ", known) + ".";
        faults.add(location.fault("'" + name + "'", what, Nearest.advice(name, known, known.size() <= FEW ? all : "")));
        return false;
    }
}

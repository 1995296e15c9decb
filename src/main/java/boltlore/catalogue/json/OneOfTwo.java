package boltlore.catalogue.json;

import boltlore.json.ObjectReader;

/** Keys that exclude or ask for one another. */
final class OneOfTwo {

    private OneOfTwo() {}

    /** A fault unless exactly one of the two keys is there. */
    static void check(ObjectReader reader, String one, String other) {
        if (reader.has(one) == reader.has(other)) {
            refuse(reader, "either '" + one + "' or '" + other + "'");
        }
    }

    static void refuse(ObjectReader reader, String expected) {
        String keys = String.join("', '", reader.keys());
        reader.fault(
                keys.isEmpty() ? "an empty object" : "the keys '" + keys + "'", expected, "Write exactly one of them.");
    }
}

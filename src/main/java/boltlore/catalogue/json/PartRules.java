package boltlore.catalogue.json;

import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.measure.PartNumber;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What the keys of one part demand of one another. */
final class PartRules {

    private static final KeyRule MASS_OF_A_LEAF = new KeyRule.OneWay("contains", "massKg");
    private static final List<String> OF_ASSEMBLIES = List.of("weighedKg", "joined", "stocked");

    private PartRules() {}

    static void check(Part part, ObjectReader reader) {
        boolean masses = reader.breaks(MASS_OF_A_LEAF);
        if (reader.has("contains")) {
            assembly(part, reader, masses);
        } else if (masses) {
            reader.fault(
                    "no 'massKg'", "the mass in kg of one of its unit", "Add it: masses of assemblies add up from it.");
        }
        for (String key : OF_ASSEMBLIES) {
            if (reader.breaks(new KeyRule.Needs(key, "contains"))) {
                reader.faultAt(
                        key, "'" + key + "' on a part without 'contains'", "'" + key + "' on assemblies only", "");
            }
        }
        once(part, reader);
    }

    private static void once(Part part, ObjectReader reader) {
        Set<PartNumber> children = new HashSet<>();
        part.contains().stream()
                .filter(child -> !child.part().text().isEmpty() && !children.add(child.part()))
                .forEach(child -> reader.faultAt(
                        "contains",
                        "'" + child.part() + "' a second time",
                        "each child once",
                        "Add the quantities up."));
        Set<String> ports = new HashSet<>();
        part.ports().stream()
                .filter(port -> !port.name().isEmpty() && !ports.add(port.name()))
                .forEach(port -> reader.faultAt(
                        "ports", "'" + port.name() + "' a second time", "each port once", "Rename one of the two."));
    }

    private static void assembly(Part part, ObjectReader reader, boolean hasMass) {
        if (hasMass) {
            reader.faultAt(
                    "massKg",
                    "a mass on an assembly",
                    "masses on its leaves, which add up",
                    "Move a mass read on a scale to 'weighedKg'.");
        }
        if (part.structure().stocked() && !reader.has("bin")) {
            reader.fault("a stocked assembly without 'bin'", "the bin where it is picked", "Add 'bin'.");
        }
        if (part.source() == Source.BUY && !part.structure().stocked() && reader.has("source")) {
            reader.fault(
                    "a bought assembly that is not stocked",
                    "\"stocked\": true, because it arrives and is picked in one piece",
                    "Add it, or make the assembly in the workshop.");
        }
    }
}

package boltlore.catalogue.json;

import boltlore.faults.Nearest;
import boltlore.json.Faults;
import boltlore.json.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every name that the catalogue gives something, and every mention of one, to be compared when all files are read. */
final class Names {

    private static final int FEW = 12;

    /** A set of names: the kind, and the family (with the option for its values) or nothing. */
    private record Shelf(Kind kind, String within) {

        String says() {
            return kind == Kind.VALUE
                    ? "a value of option '" + within.substring(within.indexOf('/') + 1) + "'"
                    : kind.says();
        }
    }

    private record Mention(Shelf shelf, String name, Spot spot) {}

    private final Map<Shelf, Map<String, Spot>> given = new HashMap<>();
    private final List<Mention> mentions = new ArrayList<>();

    /** Gives the name to something; a fault where it is taken. */
    void give(Kind kind, String within, String name, Spot spot, Faults faults) {
        Spot before = given.computeIfAbsent(new Shelf(kind, within), any -> new LinkedHashMap<>())
                .putIfAbsent(name, spot);
        if (before != null) {
            String where = before.file().equals(spot.file()) ? "" : " of " + before.file();
            faults.add(spot.fault(
                    "'" + name + "' a second time; it already stands in line " + before.line() + where,
                    "the name of " + new Shelf(kind, within).says() + " once",
                    "Rename one of the two, or remove it."));
        }
    }

    void mention(Kind kind, String within, String name, Spot spot) {
        mentions.add(new Mention(new Shelf(kind, within), name, spot));
    }

    boolean knows(Kind kind, String within, String name) {
        return given.getOrDefault(new Shelf(kind, within), Map.of()).containsKey(name);
    }

    Set<String> known(Kind kind, String within) {
        return given.getOrDefault(new Shelf(kind, within), Map.of()).keySet();
    }

    /** A fault for each mention of a name that nothing has. */
    void compare(Faults faults) {
        for (Mention mention : mentions) {
            Map<String, Spot> known = given.getOrDefault(mention.shelf(), Map.of());
            // The values of an unknown option are not known either; the option's own fault says enough.
            boolean pointless = mention.shelf().kind() == Kind.VALUE && known.isEmpty();
            if (!pointless && !known.containsKey(mention.name())) {
                faults.add(mention.spot()
                        .fault(
                                "'" + mention.name() + "'",
                                mention.shelf().says(),
                                advice(mention.name(), known.keySet())));
            }
        }
    }

    private static String advice(String name, Set<String> known) {
        if (known.isEmpty()) {
            return "There are none yet.";
        }
        String all = known.size() <= FEW ? "Known: " + String.join(", ", known) + "." : "";
        return Nearest.advice(name, known, all);
    }
}

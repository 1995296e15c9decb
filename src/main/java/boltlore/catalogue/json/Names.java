package boltlore.catalogue.json;

import boltlore.faults.Nearest;
import boltlore.json.Faults;
import boltlore.json.SourceLocation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every name that the catalogue gives something, and every mention of one, to be compared when all files are read. */
final class Names {

    private static final int FEW = 12;

    /** All names of one kind, in one family (and of one option) or in the whole catalogue. */
    private record Shelf(Kind kind, String says, Map<String, SourceLocation> names) {}

    private record Mention(Shelf shelf, String name, SourceLocation location) {}

    private final Map<Kind, Map<String, Shelf>> shelves = new EnumMap<>(Kind.class);
    private final List<Mention> mentions = new ArrayList<>();
    private final Set<Shelf> torn = Collections.newSetFromMap(new IdentityHashMap<>());

    /** Gives the name to something; a fault where it is taken. */
    void give(Kind kind, String within, String name, SourceLocation location, Faults faults) {
        Shelf shelf = shelf(kind, within);
        SourceLocation before = shelf.names().putIfAbsent(name, location);
        if (before != null) {
            String where = before.file().equals(location.file()) ? "" : " of " + before.file();
            faults.add(location.fault(
                    "'" + name + "' a second time; it already stands in line " + before.line() + where,
                    "the name of " + shelf.says() + " once",
                    "Rename one of the two, or remove it."));
        }
    }

    void mention(Kind kind, String within, String name, SourceLocation location) {
        mentions.add(new Mention(shelf(kind, within), name, location));
    }

    /** Some name of that kind could not be read, so that a mention of an unknown one may be of it. */
    void tear(Kind kind, String within) {
        torn.add(shelf(kind, within));
    }

    boolean knows(Kind kind, String within, String name) {
        return shelf(kind, within).names().containsKey(name);
    }

    private Shelf shelf(Kind kind, String within) {
        return shelves.computeIfAbsent(kind, any -> new HashMap<>())
                .computeIfAbsent(within, any -> new Shelf(kind, says(kind, within), new LinkedHashMap<>()));
    }

    private static String says(Kind kind, String within) {
        return kind == Kind.VALUE
                ? "a value of option '" + within.substring(within.indexOf('/') + 1) + "'"
                : kind.says();
    }

    /** A fault for each mention of a name that nothing has; the kinds of those names. */
    Set<Kind> compare(Faults faults) {
        return compare(mentions, faults);
    }

    /**
     * The same though some files could not be read: of names that stand as a text in one of those nothing is said, nor of
     * positions and lines, whose names may follow from others.
     *
     * @param unread the texts of those files
     */
    void compareBeside(List<String> unread, Faults faults) {
        List<Mention> plain = mentions.stream()
                .filter(mention -> mention.shelf().kind() != Kind.POSITION
                        && mention.shelf().kind() != Kind.LINE)
                .filter(mention -> unread.stream().noneMatch(text -> text.contains('"' + mention.name() + '"')))
                .toList();
        compare(plain, faults);
    }

    private Set<Kind> compare(List<Mention> some, Faults faults) {
        Set<Kind> unknown = EnumSet.noneOf(Kind.class);
        for (Mention mention : some) {
            Shelf shelf = mention.shelf();
            Set<String> known = shelf.names().keySet();
            if (!known.contains(mention.name()) && !isOfUnknownOption(shelf)) {
                unknown.add(shelf.kind());
                // What names it may be just what could not be read, which has its fault already.
                if (!torn.contains(shelf) || Nearest.to(mention.name(), known).isPresent()) {
                    faults.add(mention.location()
                            .fault("'" + mention.name() + "'", shelf.says(), advice(mention.name(), known)));
                }
            }
        }
        return unknown;
    }

    /** The values of an unknown option are not known either; the option's own fault says enough. */
    private static boolean isOfUnknownOption(Shelf shelf) {
        return shelf.names().isEmpty() && shelf.kind() == Kind.VALUE;
    }

    private static String advice(String name, Set<String> known) {
        if (known.isEmpty()) {
            return "There are none yet.";
        }
        String all = known.size() <= FEW ? "Known: " + String.join(", ", known) + "." : "";
        return Nearest.advice(name, known, all);
    }
}

package boltlore.answers;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Position;
import boltlore.explanation.ConditionWords;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.List;

/** Where a part is used over all families: lines, assemblies, companions, connectors. */
public final class WhereUsed {

    private WhereUsed() {}

    /** One sentence a place, in the order of the catalogue. */
    public static List<String> find(Catalogue catalogue, PartNumber number) {
        List<String> places = new ArrayList<>();
        catalogue.families().values().forEach(family -> inFamily(family, number, places));
        for (Part part : catalogue.parts().values()) {
            inPart(part, number, places);
        }
        return places;
    }

    private static void inFamily(Family family, PartNumber number, List<String> places) {
        ConditionWords words = new ConditionWords(family);
        for (Position position : family.positions()) {
            for (Line line : position.lines()) {
                String at = family.says().english() + ", " + position.says().english() + ", line " + line.name();
                onLine(line, number, at, words, places);
            }
        }
        for (Companion companion : family.companions()) {
            needs(companion.needs(), number, family.says().english() + ", with " + companion.part(), words, places);
        }
    }

    private static void needs(
            List<Need> needs, PartNumber number, String asker, ConditionWords words, List<String> places) {
        for (Need need : needs) {
            if (need.part().equals(number)) {
                places.add(asker + " " + NeedWords.say(need) + " (" + words.of(need.when()) + ")");
            }
        }
    }

    private static void onLine(Line line, PartNumber number, String at, ConditionWords words, List<String> places) {
        if (line.part().equals(number)) {
            places.add(at + ": " + line.quantity().toPlainString() + ", " + words.of(line.when()));
        }
        needs(line.needs(), number, at, words, places);
    }

    private static void inPart(Part part, PartNumber number, List<String> places) {
        String named = part.number() + " " + part.name().english();
        part.contains().stream()
                .filter(child -> child.part().equals(number))
                .forEach(child ->
                        places.add(named + " contains " + child.quantity().toPlainString()));
        part.needs().stream()
                .filter(need -> need.part().equals(number))
                .forEach(need -> places.add(named + " " + NeedWords.say(need)));
        part.ports().forEach(port -> atPort(port, number, named, places));
    }

    private static void atPort(Port port, PartNumber number, String named, List<String> places) {
        if (port.mates().contains(number)) {
            places.add(named + " mates with it at port " + port.name());
        }
        if (number.equals(port.blank())) {
            places.add(named + " is closed by it at port " + port.name());
        }
    }
}

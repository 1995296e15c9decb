package boltlore.answers;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.explanation.ChangeWords;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Parts by the words that one knows of them, and what has become of a part. */
public final class PartSearch {

    private PartSearch() {}

    /** Parts that have all these words in number, name, supplier or supplier's code, in the order of the catalogue. */
    public static List<Part> find(Catalogue catalogue, List<String> words) {
        return catalogue.parts().values().stream()
                .filter(part -> hasAll(part, words))
                .toList();
    }

    private static boolean hasAll(Part part, List<String> words) {
        Buying buying = part.buying();
        String text = (part.number() + "\n"
                        + String.join("\n", part.name().byLanguage().values()) + "\n"
                        + (buying == null ? "" : buying.supplier() + "\n" + buying.orderCode()))
                .toLowerCase(Locale.ROOT);
        return words.stream().allMatch(word -> text.contains(word.toLowerCase(Locale.ROOT)));
    }

    /** Notes of its own changes, then those of the lines that name it. */
    public static List<String> history(Catalogue catalogue, Part part) {
        Stream<String> own = part.upkeep().changes().stream().map(ChangeWords::say);
        Stream<String> lines = catalogue.families().values().stream()
                .flatMap(family -> family.lines()
                        .filter(line -> line.part().equals(part.number()))
                        .flatMap(line -> line.changes().stream()
                                .map(change ->
                                        family.name() + ", line " + line.name() + ", " + ChangeWords.say(change))));
        return Stream.concat(own, lines).toList();
    }
}

package boltlore.desk.frame;

import boltlore.book.KitDifference;
import boltlore.book.orders.VersionsDiffer.Said;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What people call things that the book keeps under codes. Of what an earlier catalogue had and this one has no more, the code
 * itself is all there is.
 */
public record Names(Catalogue catalogue) {

    private static final String CHOICES = "choices/";

    /** 'Ockmere Pannier'. */
    public String kit(String family) {
        Family known = catalogue.families().get(family);
        return known == null ? family : known.says().english();
    }

    /** 'Zinc-nickel'; empty of what is bare. */
    public String finish(String code) {
        Finish known = catalogue.finishes().get(code);
        return known == null ? code : known.says().english();
    }

    /** All finishes by their codes, in the order of their names. */
    public Map<String, String> finishes() {
        Map<String, String> byName = new TreeMap<>();
        catalogue.finishes().forEach((code, finish) -> byName.put(finish.says().english(), code));
        Map<String, String> all = new LinkedHashMap<>();
        byName.forEach((name, code) -> all.put(code, name));
        return all;
    }

    /** 'PV-VPB Vacuum pump bracket'. */
    public String part(String number) {
        Part known = catalogue.parts().get(new PartNumber(number));
        return known == null ? number : number + " " + known.name().english();
    }

    /** 'PV-VPB Vacuum pump bracket, finish: Zinc-nickel'. */
    public String part(String number, String finish) {
        return part(number) + in(finish);
    }

    /** 'PV-VPB Vacuum pump bracket, rev. B, finish: Zinc-nickel'. */
    public String piece(KitDifference.Piece piece) {
        return part(piece.part()) + ", rev. " + piece.revision() + in(piece.finish());
    }

    private String in(String finish) {
        return finish.isEmpty() ? "" : ", finish: " + finish(finish);
    }

    /** 'Which drive unit? Drive unit, 60 kW, then Drive unit, 90 kW' of an order of that family. */
    public String said(String family, Said said) {
        Optional<Option> option = option(catalogue.families().get(family), said.place());
        return option.map(asked ->
                        asked.asks() + " " + value(asked, said.before()) + ", then " + value(asked, said.after()))
                .orElseGet(said::toString);
    }

    private static Optional<Option> option(@Nullable Family family, String place) {
        return family == null || !place.startsWith(CHOICES)
                ? Optional.empty()
                : family.options().stream()
                        .filter(option -> option.name().text().equals(place.substring(CHOICES.length())))
                        .findFirst();
    }

    private static String value(Option option, String value) {
        return option.value(value)
                .map(OptionValue::says)
                .map(says -> says.english())
                .orElse(value);
    }
}

package boltlore.catalogue.json;

import boltlore.catalogue.Caution;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import java.util.List;
import java.util.Map;

/** cautions.json: cautions in full sentences, and the sheets that they stand on. */
final class CautionsFile {

    private static final List<String> SHEETS = List.of("bill", "picking", "coating", "contents", "fitters-cards");

    private static final TextShape SHEET = new TextShape(
            SHEETS::contains, "one of " + String.join(", ", SHEETS), "^(" + String.join("|", SHEETS) + ")$", 20);

    private static final TextShape TRADE_SHEET = new TextShape(
            name -> name.matches("[a-z]+(-[a-z]+)*"),
            "the name of a trade's sheet, as 'charging' or 'inlet-loom'",
            "^[a-z]+(-[a-z]+)*$",
            40);

    private final Reading reading;

    CautionsFile(Reading reading) {
        this.reading = reading;
    }

    Map<String, Caution> read(ObjectReader reader) {
        return Keyed.by(reader.findObjects("cautions", this::caution), Caution::code);
    }

    private Caution caution(ObjectReader reader) {
        Caution caution = new Caution(
                reading.named(reader, "caution", Kind.CAUTION),
                reading.wording(reader, "says"),
                reader.findTexts("sheets", SHEET, (sheet, location) -> sheet),
                reader.findTexts("always", TRADE_SHEET, (sheet, location) -> sheet));
        if (reader.sound() && caution.sheets().isEmpty() && caution.always().isEmpty()) {
            reader.fault("a caution for no sheet", "a sheet under 'sheets' or 'always'", "Say where it stands.");
        }
        return caution;
    }
}

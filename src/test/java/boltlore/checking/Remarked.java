package boltlore.checking;

import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.util.Arrays;
import java.util.List;

/** What the checks find, by its written name. */
final class Remarked {

    private Remarked() {}

    static List<String> in(CatalogueSketch catalogue) {
        return Checks.check(
                        catalogue.sheetCautions(SheetCautions.SHEETS.keySet()).draw())
                .stream()
                // the sketch's own question, which no line of a test need name
                .filter(remark -> !remark.about().startsWith("value van/era="))
                .map(remark -> remark.about() + ": " + remark.check().written())
                .toList();
    }

    static List<String> in(PartSketch... parts) {
        CatalogueSketch catalogue = new CatalogueSketch();
        Arrays.stream(parts).forEach(catalogue::part);
        return in(catalogue);
    }
}

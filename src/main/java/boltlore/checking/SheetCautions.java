package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import boltlore.catalogue.Weights;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Each sheet that a trade prints in this workshop has the cautions that stand on it whatever else is on it. */
final class SheetCautions {

    /** The sheets that ask for cautions of their own, and whether the workshop's data let a trade print them. */
    static final Map<String, Predicate<Catalogue>> SHEETS = sheets();

    private SheetCautions() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return SHEETS.entrySet().stream()
                .filter(sheet -> sheet.getValue().test(catalogue))
                .map(Map.Entry::getKey)
                .filter(sheet -> catalogue.workshop().cautions().values().stream()
                        .noneMatch(caution -> caution.always().contains(sheet)))
                .map(sheet -> new Remark(
                        "sheet " + sheet,
                        Check.SHEET_CAUTION,
                        "no caution that names it under 'always'",
                        "the cautions for whoever works by that sheet",
                        "Name the sheet under 'always' of its cautions in workshop/cautions.json"));
    }

    private static Map<String, Predicate<Catalogue>> sheets() {
        Map<String, Predicate<Catalogue>> sheets = new LinkedHashMap<>();
        each(sheets, family(family -> !family.electrics().equals(Electrics.NONE)), "charging", "high-voltage");
        each(sheets, family(family -> !family.electrics().inlets().isEmpty()), "inlet-loom");
        each(sheets, family(family -> !family.driving().roadLoads().isEmpty()), "driving");
        each(sheets, family(family -> !family.driving().braking().brakes().isEmpty()), "braking");
        each(sheets, family(family -> !family.driving().cooling().circuits().isEmpty()), "cooling");
        each(sheets, family(family -> !family.driving().mounting().mounts().isEmpty()), "mounting");
        each(sheets, family(family -> !family.joints().isEmpty()), "fixings", "signed-joints", "fitters-cards");
        each(sheets, family(SheetCautions::isWeighed), "weight-statement", "weighbridge");
        each(
                sheets,
                finish(finish -> finish.where() instanceof CoatedWhere.OwnOven),
                "coating-shop",
                "coating-oven",
                "coating-booth",
                "coating-batch");
        each(sheets, finish(finish -> !(finish.where() instanceof CoatedWhere.OwnOven)), "coating-outside");
        each(sheets, part(SheetCautions::isCut), "cutting");
        each(sheets, part(part -> !part.making().cuts().isEmpty()), "cutting-bars", "cutting-saw");
        each(sheets, part(part -> part.making().blank() != null), "cutting-blanks", "cutting-press");
        each(sheets, catalogue -> catalogue.capacity() != null, "work-schedule");
        each(sheets, SheetCautions::ships, "crates");
        Predicate<Catalogue> battery = part(CautionsGiven::isLithium);
        each(sheets, battery, "fitters-battery");
        each(sheets, battery.and(SheetCautions::ships), "lithium-crates", "dangerous-goods");
        each(sheets, part(part -> part.service() != null), "service-spares");
        return sheets;
    }

    private static void each(Map<String, Predicate<Catalogue>> sheets, Predicate<Catalogue> printed, String... names) {
        Stream.of(names).forEach(name -> sheets.put(name, printed));
    }

    private static Predicate<Catalogue> family(Predicate<Family> some) {
        return catalogue -> catalogue.families().values().stream().anyMatch(some);
    }

    private static Predicate<Catalogue> finish(Predicate<Finish> some) {
        return catalogue -> catalogue.finishes().values().stream().anyMatch(some);
    }

    private static Predicate<Catalogue> part(Predicate<Part> some) {
        return catalogue -> catalogue.parts().values().stream().anyMatch(some);
    }

    private static boolean isWeighed(Family family) {
        return family.donor() != null && !family.weights().equals(Weights.NONE);
    }

    private static boolean isCut(Part part) {
        return !part.making().cuts().isEmpty() || part.making().blank() != null;
    }

    private static boolean ships(Catalogue catalogue) {
        return !catalogue.shipping().crates().isEmpty();
    }
}

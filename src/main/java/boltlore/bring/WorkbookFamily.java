package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import java.util.Comparator;
import java.util.Optional;

/**
 * Whose workbook it is, and what stood in the family when it was written.
 *
 * @param base the same as {@code now} where nothing was edited in the catalogue since
 */
record WorkbookFamily(Family family, FamilyRows base, FamilyRows now) {

    private static final String INSIST =
            "'--as-of-now' takes it as if it was written from the catalogue as it is now, and"
                    + " takes out again what others have edited in it since.";

    static Outcome<WorkbookFamily> of(String file, OpenedFile opened, Catalogue catalogue, boolean asOfNow) {
        Optional<FamilyRows.Mark> mark = FamilyRows.mark(opened.sheets());
        Optional<String> named = named(opened.name(), catalogue);
        String name = mark.map(FamilyRows.Mark::family).or(() -> named).orElse("");
        if (mark.isPresent() && named.isPresent() && !named.get().equals(name)) {
            return Outcome.faulty(Fault.of(
                    file,
                    "a file named as one of " + named.get() + ", with the lines of " + name,
                    "a name of its own family, or of none",
                    "See which of the two it is, and rename the file."));
        }
        Family family = catalogue.families().get(name);
        if (family == null) {
            return Outcome.faulty(unknown(file, name, catalogue));
        }
        FamilyRows now = FamilyRows.of(catalogue, family);
        if (asOfNow || mark.filter(now.mark()::equals).isPresent()) {
            return Outcome.sound(new WorkbookFamily(family, now, now));
        }
        Optional<FamilyRows> kept = mark.flatMap(written -> FamilyRows.kept(opened.sheets(), written));
        String found = mark.isPresent()
                ? "lines of another state of " + name + " than the catalogue has, without the sheet '"
                        + FamilyRows.TITLE + "' as it was written"
                : "no line 'Family …, state …', by which it is known what it was written from";
        return kept.<Outcome<WorkbookFamily>>map(base -> Outcome.sound(new WorkbookFamily(family, base, now)))
                .orElseGet(() -> Outcome.faulty(
                        Fault.of(file, found, "a workbook as 'parts-list' wrote it, with all its sheets", INSIST)));
    }

    private static Fault unknown(String file, String name, Catalogue catalogue) {
        String known = String.join(", ", catalogue.families().keySet());
        return name.isEmpty()
                ? Fault.of(file, "a list that names no family", "a workbook that 'parts-list' wrote, of " + known, "")
                : Fault.of(
                        file,
                        "lines of the family '" + name + "'",
                        "a family of the catalogue: " + known,
                        Nearest.advice(name, catalogue.families().keySet(), "Name its own catalogue."));
    }

    /** The family as whose workbook the file is named. */
    private static Optional<String> named(String file, Catalogue catalogue) {
        return catalogue.families().keySet().stream()
                .filter(family -> file.startsWith(family + "-lines"))
                .max(Comparator.comparingInt(String::length));
    }
}

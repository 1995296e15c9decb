package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.FamilyEdits;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A family's workbook as somebody edited it, against the catalogue as it is now.
 *
 * @param family whose workbook it is
 * @param edits that are to be made, those that the catalogue has already left out
 * @param faults of cells; a row that has one counts as not edited
 * @param untaken each cell that was edited and is not taken, with the reason
 * @param since what was edited in the catalogue since the workbook was written
 * @param gone positions that go with their last line
 * @param cells where what is edited stands
 */
public record BroughtBack(
        Family family,
        FamilyEdits edits,
        List<Fault> faults,
        List<String> untaken,
        List<String> since,
        List<String> gone,
        BackCells cells) {

    /**
     * Reads a workbook that 'parts-list' wrote, or a sheet of its lines.
     *
     * @param file as the user named it
     * @param asOfNow whether a workbook that does not say what it was written from is taken as written from the catalogue now
     * @return what was edited, or why it is no such workbook
     */
    public static Outcome<BroughtBack> read(String file, byte[] bytes, Catalogue catalogue, boolean asOfNow) {
        return OpenedFile.read(file, bytes, null)
                .then(opened -> WorkbookFamily.of(file, opened, catalogue, asOfNow)
                        .then(written -> BackReading.read(file, opened, catalogue, written)));
    }

    /** Each edit in a sentence. */
    public List<String> says() {
        List<String> says = new ArrayList<>(edits.says(text -> ConditionText.words(text, family)));
        gone.forEach(position -> says.add("position " + position + " is taken out with its last line"));
        return says;
    }

    /** All that a person should know beside the edits. */
    public Stream<String> notes() {
        return Stream.concat(since.stream(), untaken.stream());
    }
}

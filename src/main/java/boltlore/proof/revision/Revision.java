package boltlore.proof.revision;

import boltlore.logic.Count;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an edit does to a family's kits.
 *
 * @param both orders valid in both revisions, over the options of both
 * @param onlyBefore orders valid in the earlier revision only
 * @param onlyAfter orders valid in the later one only
 * @param changed orders valid in both whose kits differ
 * @param cases a condition equivalent to the change, as cases none of which can be dropped; empty where there are too
 *     many to tell
 * @param parts those whose quantity changes
 * @param edits parts that are another one under the same number
 * @param undecided parts of which it is not known, and why
 * @param unproved parts that were not reached before the time was up
 * @param newOptions options that only one revision has
 * @param example one order whose kit changes
 * @param notes of each part that changes, the new notes that explain it; empty where nobody has written one
 */
public record Revision(
        Count both,
        Count onlyBefore,
        Count onlyAfter,
        Count changed,
        Optional<List<Case>> cases,
        List<PartChange> parts,
        List<PartEdit> edits,
        Map<PartNumber, String> undecided,
        List<PartNumber> unproved,
        List<OptionName> newOptions,
        Optional<ExampleKit> example,
        Map<PartNumber, List<RevisionNote>> notes) {

    /** Whether every part was decided. */
    public boolean decided() {
        return undecided.isEmpty() && unproved.isEmpty();
    }
}

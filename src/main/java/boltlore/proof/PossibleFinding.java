package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.measure.LineName;
import java.util.List;
import java.util.Optional;

/**
 * A finding that orders may have.
 *
 * @param when they have it, as a condition over options; empty where that outgrew its bound
 * @param lines that it speaks of
 * @param says the finding as a sentence about some order
 */
public record PossibleFinding(
        String subject, String detail, Optional<Condition> when, List<LineName> lines, String says) {

    public static PossibleFinding of(String subject, String detail, Condition when, List<LineName> lines, String says) {
        return new PossibleFinding(subject, detail, Optional.of(when), lines, says);
    }
}

package boltlore.proof;

import boltlore.catalogue.Family;
import boltlore.logic.Count;
import java.util.List;
import java.util.stream.Stream;

/**
 * Everything that was asked of one family, with the answers in the order of the kinds.
 *
 * @param orders how many valid orders there are
 */
public record FamilyProof(Family family, Count orders, List<Answer> answers) {

    public Stream<Answer.Defect> defects() {
        return only(Answer.Defect.class);
    }

    public <T extends Answer> Stream<T> only(Class<T> answer) {
        return answers.stream().filter(answer::isInstance).map(answer::cast);
    }
}

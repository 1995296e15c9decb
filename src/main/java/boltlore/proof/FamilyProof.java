package boltlore.proof;

import boltlore.catalogue.Accepted;
import boltlore.catalogue.Family;
import boltlore.findings.Severity;
import boltlore.logic.Count;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything that was asked of one family, with the answers in the order of the kinds.
 *
 * @param kinds that were asked
 * @param orders how many valid orders there are
 */
public record FamilyProof(Family family, List<StatementKind> kinds, Count orders, List<Answer> answers) {

    /** All that was refuted, whatever it weighs. */
    public Stream<Answer.Defect> defects() {
        return only(Answer.Defect.class);
    }

    /** What somebody has to mend, or to accept where it does not stop orders. */
    public Stream<Answer.Defect> openDefects() {
        return defects()
                .filter(defect -> defect.statement().kind().severity() != Severity.NOTE)
                .filter(defect -> acceptance(defect).isEmpty());
    }

    /** What is good to know without being a defect. */
    public Stream<Answer.Defect> information() {
        return defects().filter(defect -> defect.statement().kind().severity() == Severity.NOTE);
    }

    /** The defects that the family's file accepts. */
    public Stream<Answer.Defect> acceptedDefects() {
        return defects().filter(defect -> acceptance(defect).isPresent());
    }

    /** Why a defect was accepted; only what is to be looked at can be. */
    public Optional<Accepted> acceptance(Answer.Defect defect) {
        return defect.statement().kind().severity() == Severity.CHECK
                ? family.accepted().stream()
                        .filter(accepted ->
                                accepted.finding().equals(defect.statement().title()))
                        .findFirst()
                : Optional.empty();
    }

    /** Accepted findings of judged kinds that no order has any more; those that were not reached are not among them. */
    public List<IdleAcceptance> idleAcceptances() {
        Map<String, Answer> byTitle = new HashMap<>();
        answers.forEach(answer -> byTitle.putIfAbsent(answer.statement().title(), answer));
        return family.accepted().stream()
                .filter(accepted -> Acceptable.isJudged(accepted, kinds))
                .flatMap(accepted -> idle(accepted, byTitle.get(accepted.finding())).stream())
                .toList();
    }

    /** Accepted findings of kinds that a trade has of a kit; whether some order still has one a proof cannot say. */
    public List<Accepted> notJudged() {
        return family.accepted().stream()
                .filter(accepted -> !Acceptable.isJudged(accepted, kinds))
                .toList();
    }

    private static Optional<IdleAcceptance> idle(Accepted accepted, @Nullable Answer answer) {
        if (answer == null) {
            return Optional.of(new IdleAcceptance(accepted, "this family has nothing of that name"));
        }
        return answer instanceof Answer.Proved
                ? Optional.of(new IdleAcceptance(accepted, "no valid order has it any more"))
                : Optional.empty();
    }

    public <T extends Answer> Stream<T> only(Class<T> answer) {
        return answers.stream().filter(answer::isInstance).map(answer::cast);
    }
}

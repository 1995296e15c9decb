package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.Deadline;
import boltlore.logic.MinimalConflict;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Proves or refutes every statement about one family, one after the other. */
public final class Prover {

    private final Catalogue catalogue;
    private final Family family;
    private final Deadline deadline;
    private final Deadline share;
    private final OrdersUnder orders;
    private final Counting counting;
    private final Progress progress;
    private final List<Answer> answers = new ArrayList<>();
    /** Places of statements that are known to be false, and not yet why: to know is quick, to explain may not be. */
    private final Set<Integer> refuted = new HashSet<>();
    /** Places of all statements that are known to be false, by each name that they are about, the first one first. */
    private final Map<String, SortedSet<Integer>> falseAbout = new HashMap<>();

    private boolean ended;
    private int answered;

    private Prover(Catalogue catalogue, Family family, Deadline deadline, Progress progress) {
        this.catalogue = catalogue;
        this.family = family;
        this.deadline = deadline;
        this.share = deadline.part();
        this.orders = new OrdersUnder(family, share);
        this.counting = new Counting(family, share);
        this.progress = progress;
    }

    /** Hears how far a run has come. */
    public interface Progress {

        Progress NONE = (answered, all) -> {};

        void answered(int answered, int all);

        /** A defect is found that the family does not accept. */
        default void found(Answer.Defect defect) {}

        /** All are answered, and the valid orders are being counted. */
        default void counting() {}
    }

    /**
     * Answers all statements until the time is up: each has its share of what is left, and what its share was too short
     * for is asked again after the others. The rest are named as unproved.
     */
    public static FamilyProof prove(
            Catalogue catalogue, Family family, List<StatementKind> kinds, Deadline deadline, Progress progress) {
        Prover prover = new Prover(catalogue, family, deadline, progress);
        prover.state(kinds);
        prover.answerAll();
        progress.counting();
        prover.share.beginOneOf(1);
        return new FamilyProof(family, kinds, prover.counting.allInTime(), List.copyOf(prover.answers));
    }

    /** Kinds that there is no time to state of everything they speak of stand as one statement each. */
    private void state(List<StatementKind> kinds) {
        FamilyView view = FamilyView.of(catalogue, family, share);
        int left = 2 * kinds.size();
        for (StatementKind kind : kinds) {
            share.beginOneOf(left--);
            try {
                kind.statements(view).forEach(statement -> answers.add(new Answer.Unproved(statement)));
            } catch (Deadline.Passed e) {
                answers.add(new Answer.NotDecided(
                        Statement.notStated(kind), "there was no time to state what it speaks of"));
            }
        }
    }

    /** First what holds and what does not, of all statements; then why not, in further rounds. */
    private void answerAll() {
        List<Integer> open = IntStream.range(0, answers.size())
                .filter(place -> answers.get(place) instanceof Answer.Unproved)
                .boxed()
                .toList();
        for (boolean explained = false; !open.isEmpty() && !deadline.passed(); explained = true) {
            List<Integer> again = new ArrayList<>();
            int left = open.size();
            for (int place : open) {
                share.beginOneOf(left--);
                if (!answered(place, explained)) {
                    again.add(place);
                }
            }
            open = again;
        }
        refuted.stream().sorted().forEach(place -> set(place, unexplained(place)));
    }

    /** False where its share of the time was too short, or it is not explained yet. */
    private boolean answered(int place, boolean explained) {
        Statement statement = answers.get(place).statement();
        try {
            Optional<Answer> answer = ended
                    ? Optional.of(new Answer.NotDecided(statement, "there is no valid order to ask"))
                    : saidAlready(statement, place)
                            .or(() -> answer(
                                    statement, explained || statement.kind().endsAll()));
            if (answer.isEmpty()) {
                refuted.add(place);
                heed(place);
                return false;
            }
            set(place, answer.get());
        } catch (Deadline.Passed e) {
            if (!e.moreTimeHelps()) {
                answers.set(place, new Answer.NotDecided(statement, e.why()));
                refuted.remove(place);
                heed(place);
            }
            return !e.moreTimeHelps();
        }
        progress.answered(++answered, answers.size());
        return true;
    }

    private void set(int place, Answer answer) {
        answers.set(place, answer);
        refuted.remove(place);
        heed(place);
        if (answer instanceof Answer.Defect defect) {
            ended |= defect.statement().kind().endsAll();
            tell(defect);
        }
    }

    private Answer unexplained(int place) {
        Statement statement = answers.get(place).statement();
        return new Answer.Defect(statement, Optional.empty(), Cause.NONE, statement.limits(), counting.notCounted());
    }

    private void tell(Answer.Defect defect) {
        String title = defect.statement().title();
        if (family.accepted().stream().noneMatch(accepted -> accepted.finding().equals(title))) {
            progress.found(defect);
        }
    }

    /** Keeps the index of what is false in step with what was just found of a statement. */
    private void heed(int place) {
        Statement statement = answers.get(place).statement();
        boolean isFalse = refuted.contains(place) || answers.get(place) instanceof Answer.Defect;
        for (String name : Set.copyOf(List.of(statement.subject(), statement.detail()))) {
            if (isFalse) {
                falseAbout.computeIfAbsent(name, key -> new TreeSet<>()).add(place);
            } else {
                falseAbout.getOrDefault(name, new TreeSet<>()).remove(place);
            }
        }
    }

    private Optional<Answer> saidAlready(Statement statement, int at) {
        return statement.kind().saidAlreadyBy().isEmpty()
                ? Optional.empty()
                : falseAbout.getOrDefault(statement.subject(), new TreeSet<>()).stream()
                        .filter(place -> place != at)
                        .map(place -> answers.get(place).statement())
                        .filter(said -> statement.kind().saidAlreadyBy().contains(said.kind()))
                        .findFirst()
                        .map(said -> new Answer.SaidAlready(statement, said));
    }

    /** Empty where it is false and the answer is not to be explained. */
    private Optional<Answer> answer(Statement statement, boolean explained) {
        share.check();
        if (!(statement.question() instanceof Question.Asked asked)) {
            return Optional.of(new Answer.NotDecided(statement, ((Question.TooLarge) statement.question()).why()));
        }
        if (orders.some(asked.condition(), asked.under()) == asked.someIsSound()) {
            return Optional.of(new Answer.Proved(statement));
        }
        if (!explained) {
            return Optional.empty();
        }
        return Optional.of(asked.someIsSound() ? excluded(statement, asked) : shown(statement, asked));
    }

    /** A defect that an order shows. */
    private Answer shown(Statement statement, Question.Asked asked) {
        Choices witness = orders.valid().witness(asked.condition()).orElseThrow();
        Cause cause = Whenever.test(witness, asked.condition(), orders.valid());
        Set<OptionName> spokenOf = cause.choices().stream().map(Choice::option).collect(Collectors.toSet());
        List<Limit> limits = family.limits().stream()
                .filter(limit -> spokenOf.containsAll(Mentions.find(limit.forbids())))
                .toList();
        Touched touched = counting.touched(statement.touches(), true);
        Statement told = statement.refutedBy(statement.kind().refutedBy(statement, catalogue, witness));
        return new Answer.Defect(told, Optional.of(witness), cause, joined(statement, limits), touched);
    }

    /** A defect that lies in there being no order. */
    private Answer excluded(Statement statement, Question.Asked asked) {
        Condition condition = asked.condition();
        List<Limit> conflict = conflict(orders.limits(asked.under()), condition);
        Optional<Choices> witness = orders.valid().witness(statement.touches());
        Touched touched = counting.touched(statement.touches(), witness.isPresent());
        Cause cause = witness.map(order -> Whenever.test(order, statement.touches(), orders.valid()))
                .orElse(Cause.NONE);
        return new Answer.Defect(statement, witness, cause, joined(statement, conflict), touched);
    }

    private List<Limit> conflict(List<Limit> kept, Condition condition) {
        if (orders.some(kept, condition)) {
            throw new IllegalStateException("Two solvers differ");
        }
        return MinimalConflict.find(orders.against(kept), limits -> orders.some(limits, condition))
                .orElseThrow();
    }

    private static List<Limit> joined(Statement statement, List<Limit> found) {
        List<Limit> all = new ArrayList<>(statement.limits());
        found.stream().filter(limit -> !all.contains(limit)).forEach(all::add);
        return all;
    }
}

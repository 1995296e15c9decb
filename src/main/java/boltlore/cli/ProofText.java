package boltlore.cli;

import boltlore.choices.Choice;
import boltlore.findings.Severity;
import boltlore.logic.Count;
import boltlore.proof.Answer;
import boltlore.proof.Cause;
import boltlore.proof.FamilyProof;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import boltlore.proof.Touched;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A family's proof in words: what is wrong first, what is proved after, what is left at the end. */
final class ProofText {

    private final Screen screen;
    private final FamilyProof proof;
    private final Function<Answer.Defect, String> witness;

    private ProofText(Screen screen, FamilyProof proof, Function<Answer.Defect, String> witness) {
        this.screen = screen;
        this.proof = proof;
        this.witness = witness;
    }

    /** @param witness where the order stands that shows a defect, or empty */
    static void print(Screen screen, FamilyProof proof, Function<Answer.Defect, String> witness) {
        new ProofText(screen, proof, witness).print();
    }

    /** What somebody has to act on alone: defects, and what was not proved. */
    static void printOpen(Screen screen, FamilyProof proof, Function<Answer.Defect, String> witness) {
        ProofText text = new ProofText(screen, proof, witness);
        text.defects();
        text.left();
    }

    private void print() {
        AcceptedText accepted = defects();
        accepted.print();
        proved();
        information();
        left();
    }

    private AcceptedText defects() {
        screen.heading(proof.family().name() + ": " + number(proof.answers().size()) + " statements about "
                + (proof.orders() instanceof Count.Exactly
                        ? number(proof.orders()) + " valid orders"
                        : "valid orders"));
        if (proof.orders() instanceof Count.GivenUp givenUp) {
            screen.wrapped(2, "The valid orders were not counted: " + givenUp.why() + ".");
        }
        AcceptedText accepted = new AcceptedText(screen, proof);
        accepted.verdict();
        proof.openDefects().forEach(this::defect);
        return accepted;
    }

    private void left() {
        proof.only(Answer.NotDecided.class)
                .collect(Collectors.groupingBy(Answer.NotDecided::why, LinkedHashMap::new, Collectors.toList()))
                .forEach((why, answers) -> rest("Not decided, because " + why + ":", answers));
        rest(
                "Unproved, because the time was up:",
                proof.only(Answer.Unproved.class).toList());
    }

    private void defect(Answer.Defect defect) {
        Statement statement = defect.statement();
        screen.line("");
        screen.wrapped(0, statement.kind().severity().says() + ": " + statement.title());
        screen.wrapped(2, statement.refuted());
        screen.wrapped(2, touched(defect.touched()) + cause(defect));
        named("Lines: ", statement.lines());
        named("Limits: ", defect.limits().stream().map(limit -> limit.name()).toList());
        screen.wrapped(2, "Fix: " + statement.kind().mend());
        named("Example order: ", witness.apply(defect).isEmpty() ? List.of() : List.of(witness.apply(defect)));
    }

    static String touched(Touched touched) {
        if (touched.orders() instanceof Count.GivenUp givenUp) {
            return "How many valid orders it affects was not counted: " + givenUp.why();
        }
        String share = touched.percent()
                .map(percent -> ", " + percent.toPlainString() + " %")
                .orElse("");
        return "Affects " + number(touched.orders()) + " of " + number(touched.all()) + " valid orders" + share;
    }

    private static String cause(Answer.Defect defect) {
        Cause cause = defect.cause();
        if (cause.choices().isEmpty() || defect.witness().isEmpty()) {
            return ".";
        }
        String choices = cause.choices().stream().map(Choice::toString).collect(Collectors.joining(", "));
        return (cause.onlyThen() ? ": exactly those with " : "; among them all with ") + choices + ".";
    }

    private void named(String head, List<?> names) {
        if (!names.isEmpty()) {
            screen.wrapped(2, head + names.stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
    }

    private void proved() {
        Map<StatementKind, Integer> proved = new LinkedHashMap<>();
        proof.only(Answer.Proved.class)
                .forEach(answer -> proved.merge(answer.statement().kind(), 1, Integer::sum));
        Map<StatementKind, Integer> asked = new LinkedHashMap<>();
        proof.answers().forEach(answer -> asked.merge(answer.statement().kind(), 1, Integer::sum));
        screen.line("");
        screen.line("Proved:");
        proved.forEach((kind, many) -> {
            if (kind.severity() != Severity.NOTE) {
                int all = asked.getOrDefault(kind, many);
                screen.wrapped(
                        2,
                        many == all
                                ? kind.holds() + " (" + number(many) + ")"
                                : "Of '" + kind.name() + "': " + number(many) + " of " + number(all)
                                        + " cases never happen.");
            }
        });
    }

    private void information() {
        Map<StatementKind, Integer> found = new LinkedHashMap<>();
        proof.information().forEach(defect -> found.merge(defect.statement().kind(), 1, Integer::sum));
        found.forEach((kind, many) -> {
            screen.line("");
            screen.line("Note, " + kind.name() + ": " + number(many) + " (--json names them)");
        });
    }

    private void rest(String head, List<? extends Answer> answers) {
        if (answers.isEmpty()) {
            return;
        }
        screen.line("");
        screen.line(head);
        answers.stream()
                .collect(Collectors.groupingBy(
                        answer -> answer.statement().kind().name(), LinkedHashMap::new, Collectors.toList()))
                .forEach((kind, all) -> screen.wrapped(
                        2,
                        kind + " (" + number(all.size()) + "): "
                                + all.stream()
                                        .limit(5)
                                        .map(answer -> named(answer.statement()))
                                        .distinct()
                                        .collect(Collectors.joining(", "))
                                + (all.size() > 5 ? ", …" : "")));
    }

    private static String named(Statement statement) {
        return statement.detail().isEmpty()
                ? statement.subject()
                : statement.subject() + " (" + statement.detail() + ")";
    }

    private static String number(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    static String number(Count count) {
        return count instanceof Count.Exactly exactly
                ? String.format(Locale.ROOT, "%,d", exactly.orders())
                : "an unknown number of";
    }
}

package boltlore.proof.evidence;

import boltlore.catalogue.Limit;
import boltlore.logic.Count;
import boltlore.proof.Answer;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import java.util.List;

/**
 * The clauses of one statement, to be added to those of its family.
 *
 * @param some whether an order was found, so that the clauses can be fulfilled
 * @param models how many valid orders fulfil them, or empty where that was not asked
 * @param clauses those to add
 * @param excludedBy the limits that leave no order, where there is none and limits are the reason
 */
record StatementClauses(
        Statement statement,
        boolean some,
        boolean someIsSound,
        String models,
        Clauses clauses,
        List<Limit> excludedBy) {

    /** What was only tried on some kits was asked of no solver. */
    static boolean isAnswered(Answer answer) {
        return answer.statement().question() instanceof Question.Asked
                && (answer instanceof Answer.Proved || answer instanceof Answer.Defect);
    }

    static StatementClauses of(BaseClauses base, Answer answer) {
        Question.Asked asked = (Question.Asked) answer.statement().question();
        Clauses clauses = new Clauses(base.clauses().variables());
        clauses.add(new ConditionClauses(base.values(), clauses).of(asked.condition()));
        base.keeping(asked.under()).forEach(clauses::add);
        boolean some = answer instanceof Answer.Proved == asked.someIsSound();
        List<Limit> excludedBy = answer instanceof Answer.Defect defect && !some ? defect.limits() : List.of();
        return new StatementClauses(
                answer.statement(), some, asked.someIsSound(), models(answer, some), clauses, excludedBy);
    }

    private static String models(Answer answer, boolean some) {
        if (!some) {
            return "0";
        }
        return answer instanceof Answer.Defect defect && defect.touched().orders() instanceof Count.Exactly exactly
                ? exactly.orders().toString()
                : "";
    }

    String text() {
        StringBuilder out = new StringBuilder();
        Dimacs.comment(out, statement.title());
        Dimacs.comment(out, meaning());
        Dimacs.comment(out, "Answer: " + answer());
        excludedBy.forEach(limit -> Dimacs.comment(out, "Excluded by limit " + limit.name() + ": " + limit.because()));
        Dimacs.clauses(out, clauses.all());
        return out.toString();
    }

    /** Answer, models, title and meaning, for the index. */
    String indexed() {
        return String.join("\t", answer(), models.isEmpty() ? "-" : models, plain(statement.title()), plain(meaning()));
    }

    private String answer() {
        return some ? "SAT" : "UNSAT";
    }

    private String meaning() {
        return (someIsSound ? "UNSAT means: " : "SAT means: ") + statement.refuted();
    }

    private static String plain(String text) {
        return text.replace('\t', ' ').replace('\n', ' ');
    }
}

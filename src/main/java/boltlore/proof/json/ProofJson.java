package boltlore.proof.json;

import boltlore.catalogue.Accepted;
import boltlore.json.JsonOut;
import boltlore.logic.Count;
import boltlore.proof.Answer;
import boltlore.proof.FamilyProof;
import boltlore.proof.IdleAcceptance;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** A family's proof as one JSON object. */
public final class ProofJson {

    private ProofJson() {}

    /**
     * The proof with its defects.
     *
     * @param witness name of the order that shows a defect, or empty
     */
    public static JsonOut.Members encode(FamilyProof proof, Function<Answer.Defect, String> witness) {
        return JsonOut.object()
                .put("family", proof.family().name())
                .put("validOrders", CountJson.encode(proof.orders()))
                .putIfAny("notCounted", proof.orders() instanceof Count.GivenUp givenUp ? givenUp.why() : null)
                .put("statements", proof.answers().size())
                .put("defects", JsonOut.list(proof.openDefects().toList(), defect -> defect(defect, witness)))
                .put("accepted", JsonOut.list(proof.acceptedDefects().toList(), defect -> accepted(proof, defect)))
                .put("acceptedInVain", JsonOut.list(proof.idleAcceptances(), ProofJson::idle))
                .putIfAny(
                        "acceptedNotJudged",
                        proof.notJudged().stream().map(Accepted::finding).toList())
                .put(
                        "forInformation",
                        JsonOut.list(
                                proof.information().toList(),
                                defect -> JsonOut.text(defect.statement().title())))
                .put("proved", proved(proof))
                .put(
                        "saidAlready",
                        JsonOut.list(proof.only(Answer.SaidAlready.class).toList(), ProofJson::saidAlready))
                .put(
                        "notDecided",
                        JsonOut.list(proof.only(Answer.NotDecided.class).toList(), ProofJson::notDecided))
                .put(
                        "unproved",
                        JsonOut.list(
                                proof.only(Answer.Unproved.class).toList(),
                                answer -> JsonOut.text(answer.statement().title())));
    }

    private static JsonOut accepted(FamilyProof proof, Answer.Defect defect) {
        return JsonOut.object()
                .put("finding", defect.statement().title())
                .put("because", proof.acceptance(defect).orElseThrow().because())
                .put("affected", CountJson.encode(defect.touched().orders()))
                .putIfAny("percent", defect.touched().percent().orElse(null));
    }

    private static JsonOut idle(IdleAcceptance idle) {
        return JsonOut.object().put("finding", idle.accepted().finding()).put("why", idle.why());
    }

    private static JsonOut defect(Answer.Defect defect, Function<Answer.Defect, String> witness) {
        Statement statement = defect.statement();
        return JsonOut.object()
                .put("finding", statement.title())
                .put("kind", statement.kind().name())
                .put("subject", statement.subject())
                .putIfAny("detail", statement.detail())
                .put("severity", statement.kind().severity())
                .put("sentence", statement.refuted())
                .put("affected", CountJson.encode(defect.touched().orders()))
                .putIfAny("percent", defect.touched().percent().orElse(null))
                .putIfAny("countedAgainBy", defect.touched().checkedBy())
                .putIfAny("everyOrderWith", defect.cause().choices())
                .put("noOtherOrder", defect.cause().onlyThen())
                .putIfAny("lines", statement.lines())
                .putIfAny(
                        "limits",
                        defect.limits().stream().map(limit -> limit.name()).toList())
                .put("fix", statement.kind().mend())
                .putIfAny("example", witness.apply(defect));
    }

    private static JsonOut proved(FamilyProof proof) {
        Map<StatementKind, Integer> byKind = new LinkedHashMap<>();
        proof.only(Answer.Proved.class)
                .forEach(answer -> byKind.merge(answer.statement().kind(), 1, Integer::sum));
        JsonOut.Members all = JsonOut.object();
        byKind.forEach((kind, many) -> all.put(kind.name(), many));
        return all;
    }

    private static JsonOut saidAlready(Answer.SaidAlready answer) {
        return JsonOut.object()
                .put("statement", answer.statement().title())
                .put("by", answer.by().title());
    }

    private static JsonOut notDecided(Answer.NotDecided answer) {
        return JsonOut.object().put("statement", answer.statement().title()).put("why", answer.why());
    }
}

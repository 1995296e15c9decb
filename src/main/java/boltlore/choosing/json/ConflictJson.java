package boltlore.choosing.json;

import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
import boltlore.choosing.Conflict;
import boltlore.json.JsonOut;
import boltlore.logic.Count;
import java.util.Collection;
import java.util.List;

/** Conflicts as JSON: choices by option, limits with their sentences. */
public final class ConflictJson {

    private ConflictJson() {}

    public static JsonOut.Members encode(List<Conflict> conflicts) {
        return JsonOut.object().put("conflicts", JsonOut.list(conflicts, ConflictJson::encode));
    }

    static JsonOut.Members encode(Conflict conflict) {
        return JsonOut.object()
                .put("choices", choices(conflict.choices()))
                .put("limits", JsonOut.list(conflict.limits(), ConflictJson::limit));
    }

    private static JsonOut limit(Limit limit) {
        return JsonOut.object()
                .put("limit", limit.name())
                .put("because", limit.because())
                .putIfAny("source", limit.source());
    }

    static JsonOut choices(Collection<Choice> choices) {
        JsonOut.Members all = JsonOut.object();
        choices.forEach(choice -> all.put(choice.option().text(), choice.value()));
        return all;
    }

    /** The exact number as a text, or null where counting was given up. */
    public static JsonOut count(Count count) {
        return count instanceof Count.Exactly exactly
                ? JsonOut.text(exactly.orders().toString())
                : JsonOut.nothing();
    }
}

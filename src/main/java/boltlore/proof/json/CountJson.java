package boltlore.proof.json;

import boltlore.json.JsonOut;
import boltlore.logic.Count;

/** Counts as texts, for they outgrow the numbers that programs read exactly; null where it was not counted. */
final class CountJson {

    private CountJson() {}

    static JsonOut encode(Count count) {
        return count instanceof Count.Exactly exactly
                ? JsonOut.text(exactly.orders().toString())
                : JsonOut.nothing();
    }
}

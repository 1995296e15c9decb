package boltlore.answers;

import java.util.List;

/** A sentence, and the sentences that it rests on. */
public record Because(String sentence, List<Because> further) {

    static Because of(String sentence) {
        return new Because(sentence, List.of());
    }
}

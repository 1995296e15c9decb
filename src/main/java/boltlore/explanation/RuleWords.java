package boltlore.explanation;

import boltlore.resolution.Way;

/** The sentences of the rules that bring parts, word for word as the rules are named. */
public final class RuleWords {

    private RuleWords() {}

    public static String say(Way way) {
        return switch (way) {
            case LINE -> "A line in the kit brings its part";
            case CONTAINS -> "An assembly in the kit brings what it contains";
            case NEEDS -> "A part or line in the kit brings the companions it needs";
        };
    }
}

package boltlore.resolution.rules;

import boltlore.catalogue.Feature;
import java.util.Locale;

/** A feature's kind and size in one text, as findings show it: 'thread M8'. */
final class FeatureName {

    private FeatureName() {}

    static String say(Feature.Kind kind, String size) {
        return kind.name().toLowerCase(Locale.ROOT) + " " + size;
    }
}

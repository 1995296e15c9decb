package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;

/** What has a limit. */
public enum Limited {
    FRONT("Front axle", "die Vorderachse", "l'essieu avant"),
    REAR("Rear axle", "die Hinterachse", "l'essieu arrière"),
    WHOLE("Whole vehicle", "das ganze Fahrzeug", "le véhicule complet");

    private final String heading;

    @SuppressWarnings("ImmutableEnumChecker") // a wording never changes
    private final Wording wording;

    Limited(String heading, String german, String french) {
        this.heading = heading;
        String english = "the " + heading.toLowerCase(Locale.ROOT);
        this.wording = new Wording(Map.of("en", english, "de", german, "fr", french));
    }

    String heading() {
        return heading;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Wording wording() {
        return wording;
    }

    public BigDecimal limitKg(Chassis chassis) {
        return switch (this) {
            case FRONT -> chassis.frontLimitKg();
            case REAR -> chassis.rearLimitKg();
            case WHOLE -> chassis.grossKg();
        };
    }
}

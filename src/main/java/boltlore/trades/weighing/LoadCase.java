package boltlore.trades.weighing;

import boltlore.measure.Wording;
import java.util.Map;

/** A condition in which the vehicle's axle loads are calculated. */
public enum LoadCase {
    /** As it came, ready to drive, nobody in it. */
    BEFORE(
            "Before conversion, unladen (kerb)",
            "Vor dem Umbau, leer (fahrbereit)",
            "Avant transformation, à vide (en ordre de marche)"),
    /** With the kit, nobody in it. */
    UNLADEN("Converted, unladen (kerb)", "Umgebaut, leer (fahrbereit)", "Transformé, à vide (en ordre de marche)"),
    DRIVER("Converted, with driver", "Umgebaut, mit Fahrer", "Transformé, avec conducteur"),
    PASSENGERS(
            "Converted, with driver and passengers",
            "Umgebaut, mit Fahrer und Mitfahrern",
            "Transformé, avec conducteur et passagers"),
    LADEN("Converted, fully laden", "Umgebaut, voll beladen", "Transformé, en pleine charge");

    @SuppressWarnings("ImmutableEnumChecker") // a wording never changes
    private final Wording wording;

    LoadCase(String english, String german, String french) {
        this.wording = new Wording(Map.of("en", english, "de", german, "fr", french));
    }

    public Wording wording() {
        return wording;
    }

    public String says() {
        return wording.english();
    }
}

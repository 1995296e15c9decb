package boltlore.catalogue;

import boltlore.measure.Wording;
import java.util.Map;

/** What a person finds something to be, where there is no number to read. */
public enum FoundState {
    OPEN("open", "offen", "ouvert"),
    CLOSED("closed", "geschlossen", "fermé"),
    ON("on", "an", "en marche"),
    OFF("off", "aus", "arrêté"),
    LOCKED("locked", "gesperrt", "verrouillé"),
    FREE("free", "frei", "libre"),
    DRY("dry", "trocken", "sec"),
    FORWARD("forward", "vorwärts", "en avant"),
    REVERSE("reverse", "rückwärts", "en arrière"),
    STATIONARY("stationary", "steht still", "immobile"),
    READABLE("readable", "lesbar", "lisible");

    private final String english;
    private final String german;
    private final String french;

    FoundState(String english, String german, String french) {
        this.english = english;
        this.german = german;
        this.french = french;
    }

    /** As it stands in catalogues; in records the order's language will do too. */
    public String written() {
        return english;
    }

    public Wording says() {
        return new Wording(Map.of(Wording.ENGLISH, english, "de", german, "fr", french));
    }
}

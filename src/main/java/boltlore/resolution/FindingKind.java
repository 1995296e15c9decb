package boltlore.resolution;

import static boltlore.resolution.Severity.INFORMS;
import static boltlore.resolution.Severity.LOOK;
import static boltlore.resolution.Severity.STOPS;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of things that a person must look at, most serious first; the written name stands in orders and sheets. */
public enum FindingKind {
    CONFLICT("conflict", STOPS),
    INCOMPLETE("incomplete", STOPS),
    OVERLAP("overlap", STOPS),
    HOLE("hole", STOPS),
    BRACKET_MISSING("bracket missing", STOPS),
    ORPHAN("orphan", STOPS),
    COMPANION_MISSING("companion missing", STOPS),
    WRONG_HAND("wrong hand", STOPS),
    BOTH_HANDS("both hands", STOPS),
    NEITHER_HAND("neither hand", STOPS),
    UNEQUAL_PAIR("unequal pair", STOPS),
    INTERLOCK_OPEN("interlock open", STOPS),
    EXPORT_SOCKET_OF_ANOTHER_MARKET("export socket of another market", STOPS),
    EXPORT_NEEDS_TWO_WAY_CHARGER("export needs a two-way charger", STOPS),
    EXPORT_ABOVE_RATING("export above the charger's rating", STOPS),
    CHARGER_ABOVE_INLET("charger draws more than the inlet carries", STOPS),
    UNUSED("unused", LOOK),
    STRAY("stray", LOOK),
    CHARGER_PHASES_ABOVE_INLET("charger has more phases than the inlet", LOOK),
    CHARGER_PHASES_ABOVE_SUPPLY("charger has more phases than the supply", LOOK),
    INLET_OF_ANOTHER_MARKET("inlet of another market", LOOK),
    LABELS_OF_ANOTHER_MARKET("labels in another language than the market's", LOOK),
    CABLE_OUTSIDE_WINDOW("cable outside its window", LOOK),
    ERA_AGAINST_BUILD_DATE("era against build date", LOOK),
    NO_MASK("no mask of that size", LOOK),
    LEAF_WITHOUT_BIN("leaf without a bin", LOOK),
    USUAL_TAKEN("usual taken", INFORMS),
    WAIVED("waived", INFORMS),
    EXTRA("extra", INFORMS),
    LEFT_OUT("left out", INFORMS),
    KEPT("kept", INFORMS);

    private final String written;
    private final Severity severity;

    FindingKind(String written, Severity severity) {
        this.written = written;
        this.severity = severity;
    }

    public String written() {
        return written;
    }

    public Severity severity() {
        return severity;
    }

    public static Optional<FindingKind> written(String name) {
        return Arrays.stream(values()).filter(kind -> kind.written.equals(name)).findFirst();
    }
}

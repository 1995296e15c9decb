package boltlore.resolution;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** The kinds of things that a person must look at, most serious first; the written name stands in orders and sheets. */
public enum FindingKind implements Kind {
    CONFLICT("conflict", STOP),
    INCOMPLETE("incomplete", STOP),
    OVERLAP("two alternatives selected", STOP),
    HOLE("required part missing", STOP),
    BRACKET_MISSING("bracket missing", STOP),
    ORPHAN("fitted without its parent", STOP),
    COMPANION_MISSING("associated part missing", STOP),
    WRONG_HAND("wrong hand", STOP),
    BOTH_HANDS("both hands", STOP),
    NEITHER_HAND("neither hand", STOP),
    UNEQUAL_PAIR("unequal pair", STOP),
    INTERLOCK_OPEN("interlock open", STOP),
    V2L_OUTLET_OF_ANOTHER_MARKET("V2L outlet of another market", STOP),
    V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER("V2L outlet needs a bidirectional charger", STOP),
    V2L_OUTLET_ABOVE_CHARGER("V2L outlet above the charger's rating", STOP),
    CHARGER_ABOVE_INLET("charger draws more than the inlet carries", STOP),
    UNUSED("bracket not needed", CHECK),
    STRAY("fitted but not required", CHECK),
    CHARGER_PHASES_ABOVE_INLET("charger has more phases than the inlet", CHECK),
    CHARGER_PHASES_ABOVE_SUPPLY("charger has more phases than the supply", CHECK),
    LEAD_PHASES_BELOW_CHARGER("public lead has fewer phases than inlet and charger", CHECK),
    LEAD_AMPS_BELOW_CHARGER("public lead carries less than inlet and charger", CHECK),
    INLET_OF_ANOTHER_MARKET("inlet of another market", CHECK),
    DC_INLET_OF_ANOTHER_MARKET("DC inlet of another market", CHECK),
    LABELS_OF_ANOTHER_MARKET("labels in another language than the market's", CHECK),
    CABLE_OUTSIDE_WINDOW("cable outside its window", CHECK),
    ERA_AGAINST_BUILD_DATE("body era does not match build date", CHECK),
    NO_MASK("no mask in that size", CHECK),
    LEAF_WITHOUT_BIN("part has no bin location", CHECK),
    USUAL_TAKEN("default applied", NOTE),
    WAIVED("waived", NOTE),
    EXTRA("extra", NOTE),
    LEFT_OUT("left out", NOTE),
    KEPT("kept", NOTE);

    private final String written;
    private final Severity severity;

    FindingKind(String written, Severity severity) {
        this.written = written;
        this.severity = severity;
    }

    @Override
    public String code() {
        return written;
    }

    public String written() {
        return written;
    }

    @Override
    public String room() {
        return "kit";
    }

    @Override
    public Severity severity() {
        return severity;
    }
}

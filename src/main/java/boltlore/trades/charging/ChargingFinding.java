package boltlore.trades.charging;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.findings.Kind;
import boltlore.findings.Severity;

/** What charging and high voltage of an order may show. */
public enum ChargingFinding implements Kind {
    MODULES_AGAINST_PACK(STOP),
    PACK_OUTSIDE_CHARGER(STOP),
    CHARGE_CURRENT_ABOVE_PACK(STOP),
    PACK_ABOVE_INLET(STOP),
    PRECHARGE_ENERGY(STOP),
    PRECHARGE_ABORTED(STOP),
    PRECHARGE_SHORTED(STOP),
    Y_ENERGY(STOP),
    LOAD_ABOVE_CABLE(STOP),
    VOLTAGE_ABOVE_CABLE(STOP),
    LOAD_ABOVE_PORT(STOP),
    LOAD_ABOVE_PACK(STOP),
    PEAK_ABOVE_PACK(STOP),
    NOT_PROTECTED(STOP),
    FAR_END_NOT_PROTECTED(STOP),
    FUSE_FAR_FROM_SOURCE(STOP),
    LOAD_ABOVE_FUSE(STOP),
    FUSE_ABOVE_CABLE(STOP),
    VOLTAGE_ABOVE_FUSE(STOP),
    SHORT_CIRCUIT_ABOVE_FUSE(STOP),
    HEAT_ABOVE_CABLE(STOP),
    CABLE_NOT_AT_POSITION(STOP),
    PART_NOT_IN_KIT(STOP),
    SHARED_PINS(STOP),
    /** {lead}: its plug codes {code} A, inlet and charger draw {flows} A of that, and its wires bear {wires} A. */
    LEAD_ABOVE_ITS_WIRES(STOP),
    PROTECTED_WITHOUT_FUSE(CHECK),
    BRANCH_NOT_JUDGED(CHECK),
    LOAD_NOT_DERIVED(CHECK),
    DROP_ABOVE_LIMIT(CHECK),
    FUSE_AGAINST_SHORT_CIRCUIT_ONLY(CHECK),
    PACK_BELOW_DC_CHARGERS(CHECK),
    TWO_DIRECT_INLETS(CHECK),
    OUTLET_ABOVE_CHARGER(CHECK),
    NOT_GIVEN_ONCE(CHECK),
    BUSES_NOT_GIVEN(NOTE),
    DC_LINK_NOT_GIVEN(NOTE),
    Y_NOT_GIVEN(NOTE),
    SUPPLY_NOT_KNOWN(NOTE);

    private final Severity severity;

    ChargingFinding(Severity severity) {
        this.severity = severity;
    }

    /**
     * Whether it is asked of every valid order too. Modules are counted by the check of the catalogue, and what the outlet gives
     * beside the charger has a statement of its own.
     */
    boolean proved() {
        return severity != NOTE && this != MODULES_AGAINST_PACK && this != OUTLET_ABOVE_CHARGER;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "charging";
    }
}

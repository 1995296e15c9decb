package boltlore.trades.charging;

import boltlore.catalogue.ProximityKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A component of pilot or proximity.
 *
 * @param contact 'pilot' or 'proximity'
 * @param where it sits, and in words what for
 * @param value in Ω, or what it is
 * @param source where the value comes from
 */
public record LoomPart(String contact, String where, String value, String source) {

    private static final String PILOT = "Pilot";
    private static final String PROXIMITY = "Proximity";
    private static final String OWN = "workshop's own value, check against ";
    private static final String STANDARD = OWN + "IEC 61851-1, Annex A";
    private static final String HANDLE = OWN + "SAE J1772";

    private static final LoomPart SETTING = new LoomPart(
            PROXIMITY,
            "In the controller: a setting for this family of inlets, for the resistor in the plug codes the cable by"
                    + " another table than IEC 61851-1",
            "–",
            OWN + "GB/T 18487.1");

    /** What inlet, loom and controller need, and what the plug brings, for that kind of inlet. */
    public static List<LoomPart> of(ProximityKind kind) {
        List<LoomPart> parts = new ArrayList<>(pilot());
        parts.addAll(
                switch (kind) {
                    case CABLE_CODE -> codes();
                    case HANDLE -> handle();
                    case OTHER_CODE -> List.of(SETTING);
                });
        return List.copyOf(parts);
    }

    private static List<LoomPart> pilot() {
        return List.of(
                new LoomPart(PILOT, "In series, ahead of the resistors", "diode", STANDARD),
                resistor(PilotState.B, "To earth, always: connected, not ready", STANDARD),
                resistor(PilotState.C, "To earth, switched beside it: charging", STANDARD),
                resistor(PilotState.D, "Instead of that, only where charging needs ventilation", STANDARD));
    }

    private static LoomPart resistor(PilotState state, String where, String source) {
        return new LoomPart(PILOT, where + " (state " + state + ")", state.ohm() + " Ω ± 3 %", source);
    }

    private static List<LoomPart> codes() {
        return Arrays.stream(CableCode.values())
                .map(code -> new LoomPart(
                        PROXIMITY,
                        "In the plug of the cable: " + amps(code) + ", read from " + code.fromOhm() + " to "
                                + code.toOhm() + " Ω",
                        code.ohm() + " Ω",
                        OWN + "IEC 61851-1, Table B.2"))
                .toList();
    }

    private static String amps(CableCode code) {
        int one = code.amps(1);
        int three = code.amps(3);
        return one == three ? one + " A" : three + " A on three phases, " + one + " A on one";
    }

    private static List<LoomPart> handle() {
        return List.of(
                new LoomPart(PROXIMITY, "In the inlet, to earth", "2700 Ω", HANDLE),
                new LoomPart(PROXIMITY, "In the handle: latched", Handle.LATCHED.ohm() + " Ω", HANDLE),
                new LoomPart(
                        PROXIMITY,
                        "In the handle: button pressed, so charging stops at once",
                        "about " + Handle.BUTTON_PRESSED.ohm() + " Ω",
                        HANDLE));
    }
}

package boltlore.trades.testing;

/**
 * Why what was written down cannot be judged.
 *
 * @param found what was written, or empty
 * @param expected what should have been, or empty
 */
public record Flaw(Kind kind, String found, String expected) {

    public enum Kind {
        NO_INSTRUMENT,
        NO_NAME,
        NO_DAY,
        NOT_A_DAY,
        DAY_TO_COME,
        NOT_A_NUMBER,
        NUMBER_TWO_WAYS,
        OUT_OF_RANGE,
        NO_UNIT,
        OTHER_UNIT,
        UNKNOWN_STATE,
        SEVERAL_DAYS,
        NOT_ABOVE_ZERO,
        NOT_THE_PACK,
        METER_LOADS_THE_BUS,
        RESISTOR_UNSUITED,
        VOLTAGE_DID_NOT_FALL,
        MORE_THAN_THE_PACK,
        OTHER_POLE_GREATER,
        POLES_DO_NOT_ADD_UP,
        CHASSIS_VOLTS_TOO_SMALL
    }

    static Flaw of(Kind kind) {
        return new Flaw(kind, "", "");
    }
}

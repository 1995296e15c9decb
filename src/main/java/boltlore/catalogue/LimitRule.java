package boltlore.catalogue;

/** Limits that are worked out for each kit from what it is made of. */
public enum LimitRule {
    /** Resistance between a part and the chassis. */
    BONDING("bonding", "ohm", Way.AT_MOST),
    /** Current at which bonding is measured. */
    BONDING_AMPS("bonding-amps", "A", Way.AT_LEAST),
    /** Of the direct-current bus against the chassis, from voltmeter readings; the meter shows V, the limit is in kohm. */
    ISOLATION("isolation", "V", Way.AT_LEAST),
    /** Of the same bus while it is dead, with an insulation tester. */
    DEAD_ISOLATION("dead-isolation", "Mohm", Way.AT_LEAST),
    /** Of the mains side against the chassis, with an insulation tester: the strictest of all series of the regulation. */
    MAINS_ISOLATION("mains-isolation", "Mohm", Way.AT_LEAST),
    /** The same by the newest series alone. */
    MAINS_ISOLATION_PER_VOLT("mains-isolation-per-volt", "Mohm", Way.AT_LEAST),
    /** Of the circuit that feeds a load, likewise. */
    EXPORT_ISOLATION("export-isolation", "Mohm", Way.AT_LEAST),
    /** Until the link stands at the share of the pack's voltage at which the main contactor may close. */
    PRECHARGE_TIME("precharge-time", "ms", Way.AROUND),
    /** Voltage of the link as the main contactor closes, as a share of the pack's; the meter shows V, the limit is in %. */
    PRECHARGE_VOLTS("precharge-volts", "V", Way.AT_LEAST),
    /** Duty cycle of the pilot that offers the current of the customer's supply. */
    PILOT_DUTY("pilot-duty", "%", Way.AROUND),
    /** Current in one phase while charging. */
    CHARGE_AMPS("charge-amps", "A", Way.AT_MOST),
    /** Power taken from the customer's supply. */
    CHARGE_POWER("charge-power", "kW", Way.AROUND),
    /** Voltage at the V2L outlet. */
    EXPORT_VOLTS("export-volts", "V", Way.AROUND),
    /** Residual current at which the V2L outlet is cut off. */
    TRIP_AMPS("trip-amps", "mA", Way.AT_MOST),
    /** Time until the V2L outlet is cut off at the rated residual current. */
    TRIP_TIME("trip-time", "ms", Way.AT_MOST);

    /** Whether the figure is a limit or a target. */
    public enum Way {
        AT_LEAST,
        AT_MOST,
        /** Within some per cent of the figure. */
        AROUND
    }

    private final String written;
    private final String unit;
    private final Way way;

    LimitRule(String written, String unit, Way way) {
        this.written = written;
        this.unit = unit;
        this.way = way;
    }

    public String written() {
        return written;
    }

    /** What the instrument must show. */
    public String unit() {
        return unit;
    }

    public Way way() {
        return way;
    }
}

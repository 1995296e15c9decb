package boltlore.trades.charging;

import java.math.BigDecimal;
import java.util.Optional;

/** What a resistance at the proximity contact of an inlet says; which table holds depends on the inlet. */
public sealed interface Proximity {

    /** A cable with its code. */
    record Cable(CableCode code) implements Proximity {}

    /** No current may flow: no plug, or a resistance above every band. */
    record NoCable() implements Proximity {}

    /** A resistance below every band: a short or a wrong plug. */
    record Fault() implements Proximity {}

    /** IEC 61851-1, Table B.2: the resistor codes the current. */
    static Proximity ofCable(BigDecimal ohm) {
        Optional<CableCode> code = CableCode.of(ohm);
        if (code.isPresent()) {
            return new Cable(code.get());
        }
        return ohm.compareTo(BigDecimal.valueOf(CableCode.A63.fromOhm())) < 0 ? new Fault() : new NoCable();
    }

    /** The most that may flow in A: 0 without a cable and on a fault. */
    default int amps(int phases) {
        return this instanceof Cable cable ? cable.code().amps(phases) : 0;
    }
}

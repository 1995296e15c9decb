package boltlore.cli;

import boltlore.faults.Fault;
import java.util.List;

/**
 * What became of one order file.
 *
 * @param answer what is told of its kit, as text or as JSON; empty where it became none
 * @param exit exit code that this file alone calls for
 */
record OrderOutcome(String answer, List<Fault> faults, int exit) {

    static OrderOutcome refused(List<Fault> faults) {
        return new OrderOutcome("", faults, Exit.FAULTS);
    }
}

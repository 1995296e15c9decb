package boltlore.resolution.rules;

import java.util.Map;

/** The rules keep firing; the message names those that do. A defect of the program, never of an order. */
public final class RunawayRules extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    RunawayRules(int bound, Map<String, Integer> firing) {
        super("The rules were stopped after " + bound + " firings; these keep firing: " + firing);
    }
}

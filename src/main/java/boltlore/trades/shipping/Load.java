package boltlore.trades.shipping;

import java.util.Comparator;
import java.util.List;

/**
 * What is packed together: a fit stage, a bag that is a crate of its own, dangerous goods of one number, or extras.
 *
 * @param stage fit stage; empty for all of them, and for extras
 * @param bag bag that is a crate of its own, or empty
 * @param un UN number of dangerous goods, which are packed with nothing else, or empty
 * @param extras whether it is what the order asks for beside the kit
 */
public record Load(String stage, String bag, String un, boolean extras) {

    /** Stages in fitting order, what serves all stages after them, extras last; dangerous goods at the end of each. */
    static Comparator<Load> order(List<String> stages) {
        return Comparator.comparing(Load::extras)
                .thenComparing(load -> load.stage().isEmpty())
                .thenComparing(load -> stages.contains(load.stage()) ? stages.indexOf(load.stage()) : stages.size())
                .thenComparing(Load::stage)
                .thenComparing(Load::un)
                .thenComparing(load -> load.bag().isEmpty())
                .thenComparing(Load::bag);
    }

    public boolean dangerous() {
        return !un.isEmpty();
    }
}

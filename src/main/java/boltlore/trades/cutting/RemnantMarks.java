package boltlore.trades.cutting;

import java.util.HashSet;
import java.util.Set;

/** Gives each remnant a mark that no other one has or had: the first order and the number of its bar, or the next free one. */
final class RemnantMarks {

    private final String order;
    private final Set<String> taken;

    RemnantMarks(String order, RemnantRack rack) {
        this.order = order;
        this.taken = new HashSet<>(rack.marks());
    }

    String next(int bar) {
        int number = bar;
        while (!taken.add(order + "-" + number)) {
            number++;
        }
        return order + "-" + number;
    }
}

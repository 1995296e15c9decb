package boltlore.proof.sample;

import java.util.ArrayList;
import java.util.List;

/** Takes orders out of a sample whose every combination other orders have as well. */
final class Spared {

    private Spared() {}

    static List<int[]> without(List<int[]> orders, Combinations combinations) {
        int[] times = new int[combinations.count()];
        orders.forEach(order -> combinations.of(order, number -> times[number]++));
        List<int[]> needed = new ArrayList<>(orders);
        for (int[] order : orders) {
            boolean[] alone = new boolean[1];
            combinations.of(order, number -> alone[0] |= times[number] == 1);
            if (!alone[0]) {
                needed.remove(order);
                combinations.of(order, number -> times[number]--);
            }
        }
        return needed;
    }
}

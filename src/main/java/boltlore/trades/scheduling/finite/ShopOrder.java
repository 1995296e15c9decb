package boltlore.trades.scheduling.finite;

import java.util.List;

/**
 * What is to be done for one order.
 *
 * @param due day by whose evening it is to be finished; of an order without a date the day on which it could be finished
 *     alone, by which it is ranked but not judged
 * @param dated whether the order has a date
 * @param steps each after those that it waits for; the last is done last
 */
public record ShopOrder(String name, int due, boolean dated, List<Step> steps) {

    /**
     * A step, which begins on the evening of the day on which all before it are finished.
     *
     * @param release day on whose evening it may begin at the earliest
     * @param days calendar days that it takes at least, however little work it is: delivery, moving, waiting, drying
     * @param work one after the other, at work centres; none where the workshop has no work with it
     * @param after places of the steps before it
     */
    public record Step(int release, int days, List<Work> work, List<Integer> after) {
        public Step {
            work = List.copyOf(work);
            after = List.copyOf(after);
        }
    }

    /**
     * Work that a station does in one go, nights and days off aside.
     *
     * @param centre place of the work centre in the shop
     * @param minutes standard minutes, at least 1
     */
    public record Work(int centre, long minutes) {
        public Work {
            if (minutes < 1) {
                throw new IllegalArgumentException("Work takes a minute at least, not " + minutes);
            }
        }
    }

    public ShopOrder {
        steps = List.copyOf(steps);
        for (int i = 0; i < steps.size(); i++) {
            int place = i;
            if (steps.get(i).after().stream().anyMatch(before -> before >= place)) {
                throw new IllegalArgumentException("Step " + i + " of " + name + " stands before what it waits for");
            }
        }
    }

    public ShopOrder due(int day, boolean isDated) {
        return new ShopOrder(name, day, isDated, steps);
    }
}

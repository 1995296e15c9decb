package boltlore.trades.scheduling.finite;

import boltlore.trades.scheduling.finite.ShopOrder.Step;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import java.util.Arrays;
import java.util.List;

/**
 * When the steps of one order may run where every station is free: forwards from the release, backwards from the due date
 * (critical path method, J. E. Kelley and M. R. Walker, 1959; from memory), here over calendars. Days are evenings: a step
 * works from the morning after it begins.
 */
public final class Windows {

    private final int[] start;
    private final int[] finish;
    private final int[] latestStart;
    private final int[] latestFinish;
    private final long[][] begin;
    private final long[][] latestBegin;
    private final long[][] end;

    private Windows(int count) {
        start = new int[count];
        finish = new int[count];
        latestStart = new int[count];
        latestFinish = new int[count];
        begin = new long[count][];
        latestBegin = new long[count][];
        end = new long[count][];
    }

    public static Windows of(ShopOrder order, Shop shop) {
        Windows windows = new Windows(order.steps().size());
        windows.forwards(order.steps(), shop);
        windows.backwards(order.steps(), order.due(), shop);
        return windows;
    }

    /** Evening on which the order can be finished at the earliest. */
    public int earliest() {
        return Arrays.stream(finish).max().orElse(0);
    }

    /** Evening on which the step may begin at the earliest. */
    public int start(int step) {
        return start[step];
    }

    /** Evening on which the step can be finished at the earliest. */
    public int finish(int step) {
        return finish[step];
    }

    /** Evening on which the step must begin for the order to be in time. */
    public int latestStart(int step) {
        return latestStart[step];
    }

    /** Evening on which the step must be finished for the order to be in time. */
    public int latestFinish(int step) {
        return latestFinish[step];
    }

    /** Time at which that work of the step may begin at the earliest. */
    long begin(int step, int work) {
        return begin[step][work];
    }

    /** Time at which that work of the step must begin for the order to be in time. */
    public long latestBegin(int step, int work) {
        return latestBegin[step][work];
    }

    /** Time at which that work of the step must end for the order to be in time. */
    public long end(int step, int work) {
        return end[step][work];
    }

    private void forwards(List<Step> steps, Shop shop) {
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            start[i] = step.after().stream().mapToInt(before -> finish[before]).reduce(step.release(), Math::max);
            begin[i] = new long[step.work().size()];
            long time = Shop.morningAfter(start[i]);
            finish[i] = start[i] + step.days();
            for (int k = 0; k < step.work().size(); k++) {
                Work work = step.work().get(k);
                begin[i][k] = shop.open(work.centre()).opening(time);
                time = shop.open(work.centre()).after(time, work.minutes());
                finish[i] = Math.max(finish[i], Shop.endDay(time));
            }
        }
    }

    private void backwards(List<Step> steps, int due, Shop shop) {
        Arrays.fill(latestFinish, due);
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            int works = step.work().size();
            end[i] = new long[works];
            latestBegin[i] = new long[works];
            long time = Shop.morningAfter(latestFinish[i]);
            latestStart[i] = latestFinish[i] - step.days();
            for (int k = works - 1; k >= 0; k--) {
                Work work = step.work().get(k);
                end[i][k] = time;
                time = shop.open(work.centre()).before(time, work.minutes());
                latestBegin[i][k] = time;
                latestStart[i] = Math.min(latestStart[i], Shop.startDay(time) - 1);
            }
            for (int before : step.after()) {
                latestFinish[before] = Math.min(latestFinish[before], latestStart[i]);
            }
        }
    }
}

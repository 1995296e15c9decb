package boltlore.trades.coating.sheets;

import boltlore.measure.Money;
import boltlore.trades.coating.ChangeOver;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.Round;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.stream.Stream;

/** A whole plan in a few words. */
public final class PlanWords {

    private PlanWords() {}

    /** '3 runs, 2 change-overs (90 min, 35.20 EUR), 9 oven loads (at least 9), day 2'. */
    public static String work(CoatJob job) {
        CoatPlan plan = job.plan();
        int loads = (int) plan.loads().count();
        int least = plan.rounds().stream().mapToInt(Round::leastLoads).sum();
        String through = job.timetable().known()
                ? ", through on " + job.day(job.timetable().days())
                : "";
        return CoatWords.count(plan.runs().size(), "run of one powder", "runs of one powder each") + ", "
                + changeOvers(job) + ", " + CoatWords.count(loads, "oven load", "oven loads") + " (fewer than " + least
                + " cannot do)" + through;
    }

    /** '2 change-overs (90 min, 35.20 EUR)'. */
    static String changeOvers(CoatJob job) {
        String count = CoatWords.count(job.plan().changeOvers(), "change-over", "change-overs");
        boolean told = minutes(job).signum() > 0 || cost(job).signum() > 0;
        return told ? count + " (" + minutes(job) + " min, " + money(cost(job), job) + ")" : count;
    }

    /** Minutes of all change-overs. */
    static BigDecimal minutes(CoatJob job) {
        return BigDecimal.valueOf(
                changes(job).mapToLong(change -> change.work().minutes()).sum());
    }

    /** Cost of all change-overs, each rounded as it is shown. */
    static BigDecimal cost(CoatJob job) {
        return changes(job).map(change -> rounded(change.cost(), job)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Stream<ChangeOver> changes(CoatJob job) {
        return job.plan().runs().stream().map(PowderRun::changeOver).filter(Objects::nonNull);
    }

    static String money(BigDecimal amount, CoatJob job) {
        return rounded(amount, job).toPlainString() + " "
                + job.workshop().currency().getCurrencyCode();
    }

    /** To the minor unit of the workshop's currency. */
    static BigDecimal rounded(BigDecimal amount, CoatJob job) {
        return Money.rounded(amount, job.workshop().currency());
    }
}

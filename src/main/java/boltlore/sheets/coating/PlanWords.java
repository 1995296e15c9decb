package boltlore.sheets.coating;

import boltlore.coating.ChangeOver;
import boltlore.coating.CoatPlan;
import boltlore.coating.PowderRun;
import boltlore.coating.Round;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

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
        List<ChangeOver> all = job.plan().runs().stream()
                .map(PowderRun::changeOver)
                .filter(Objects::nonNull)
                .toList();
        String count = CoatWords.count(all.size(), "change-over", "change-overs");
        int minutes = all.stream().mapToInt(change -> change.work().minutes()).sum();
        BigDecimal cost =
                all.stream().map(change -> rounded(change.cost(), job)).reduce(BigDecimal.ZERO, BigDecimal::add);
        boolean told = minutes > 0 || cost.signum() > 0;
        return told ? count + " (" + minutes + " min, " + money(cost, job) + ")" : count;
    }

    static String money(BigDecimal amount, CoatJob job) {
        return rounded(amount, job).toPlainString() + " "
                + job.workshop().currency().getCurrencyCode();
    }

    /** To the minor unit of the workshop's currency. */
    static BigDecimal rounded(BigDecimal amount, CoatJob job) {
        int digits = job.workshop().currency().getDefaultFractionDigits();
        return amount.setScale(Math.max(0, digits), RoundingMode.HALF_UP);
    }
}

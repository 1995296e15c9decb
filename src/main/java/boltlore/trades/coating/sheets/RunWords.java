package boltlore.trades.coating.sheets;

import boltlore.measure.Digits;
import boltlore.trades.coating.ChangeOver;
import boltlore.trades.coating.PowderRun;

/** What is worth saying about one run. */
final class RunWords {

    private RunWords() {}

    /** 'no, it is in the booth', or from what, how carefully, how long and for how much. */
    static String cleanDown(PowderRun run, CoatJob job) {
        ChangeOver change = run.changeOver();
        if (change == null) {
            return "no, it is in the booth";
        }
        String from = change.from().isEmpty() ? "" : "from " + change.from() + " ";
        String how = change.toDarker() ? "to darker" : "to the last speck";
        return "yes, " + from + how + (change.work().minutes() == 0 ? "" : work(change, job));
    }

    private static String work(ChangeOver change, CoatJob job) {
        String people = CoatWords.count(change.work().people(), "person", "people");
        String lost = Digits.plain(change.work().powderKg()) + " kg lost";
        return ": " + change.work().minutes() + " min by " + people + ", " + lost + ", "
                + PlanWords.money(change.cost(), job);
    }
}

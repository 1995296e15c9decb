package boltlore.trades.coating.sheets;

import boltlore.catalogue.Booth;
import boltlore.catalogue.Powder;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.Round;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is worth saying about the order of the powders. */
final class PowderRunWords {

    private PowderRunWords() {}

    static String of(CoatJob job) {
        CoatPlan plan = job.plan();
        String booths = job.shop().booths().stream().map(PowderRunWords::booth).collect(Collectors.joining("; "));
        String runs = CoatWords.count(plan.runs().size(), "run", "runs");
        return booths + ". " + PlanWords.changeOvers(job) + " for " + runs
                + " of one powder each, from light to dark where that is cheaper. " + shortest(plan)
                + " A coat is cured before the next is sprayed on it." + unknown(job);
    }

    private static String booth(Booth booth) {
        return booth.says() + (booth.holdsPowder().isEmpty() ? " is empty" : " holds " + booth.holdsPowder());
    }

    private static String shortest(CoatPlan plan) {
        if (plan.rounds().stream().allMatch(Round::shortest)) {
            return "No other order of these powders costs less to change"
                    + (plan.rounds().size() > 1 ? " within a round." : ".");
        }
        return "It is the best order known; that no other costs less is not proved.";
    }

    /** Powders of which nobody has told how light they are. */
    private static String unknown(CoatJob job) {
        String unknown = job.plan().runs().stream()
                .map(PowderRun::powder)
                .distinct()
                .filter(powder -> untold(job.shop().powders().get(powder)))
                .collect(Collectors.joining(", "));
        return unknown.isEmpty()
                ? ""
                : " How light " + unknown + " is nobody has told: it counts as lighter than what it follows.";
    }

    private static boolean untold(@Nullable Powder powder) {
        return powder == null || powder.lightness() == null;
    }
}

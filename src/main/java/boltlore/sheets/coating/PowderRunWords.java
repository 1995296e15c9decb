package boltlore.sheets.coating;

import boltlore.catalogue.Booth;
import boltlore.catalogue.CoatingShop;
import boltlore.coating.CoatPlan;
import boltlore.coating.OvenBatch;
import boltlore.coating.PowderRuns;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What is worth saying about the order of the powders. */
final class PowderRunWords {

    private PowderRunWords() {}

    static String of(CoatPlan plan, CoatingShop shop) {
        String booths = shop.booths().stream().map(PowderRunWords::booth).collect(Collectors.joining("; "));
        String changeOvers = CoatWords.count(PowderRuns.changeOvers(plan.runs()), "change-over", "change-overs");
        String runs = CoatWords.count(plan.runs().size(), "run", "runs");
        return booths + ". " + changeOvers + " for " + runs
                + " of one powder each. A coat is cured before the next is sprayed on it." + curedAlike(plan);
    }

    private static String booth(Booth booth) {
        return booth.says() + (booth.holdsPowder().isEmpty() ? " is empty" : " holds " + booth.holdsPowder());
    }

    /** Batches of one coat that could hang in one oven load after spraying. */
    private static String curedAlike(CoatPlan plan) {
        SortedMap<String, List<Integer>> byWindow = plan.batches().stream()
                .filter(batch -> batch.finish().coats().size() == 1)
                .collect(Collectors.groupingBy(
                        batch -> CoatWords.cures(batch.finish()) + " in "
                                + batch.oven().says(),
                        TreeMap::new,
                        Collectors.mapping(OvenBatch::number, Collectors.toList())));
        return byWindow.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(PowderRunWords::together)
                .collect(Collectors.joining());
    }

    private static String together(Map.Entry<String, List<Integer>> window) {
        String batches = window.getValue().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return " Batches " + batches + " cure alike (" + window.getKey() + "): once sprayed they may hang together.";
    }
}

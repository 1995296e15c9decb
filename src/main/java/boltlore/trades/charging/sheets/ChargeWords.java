package boltlore.trades.charging.sheets;

import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.Judgement;
import boltlore.trades.charging.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What was found, a sentence each: all about pack, charger and precharge, and of the cables what is not fine. */
public final class ChargeWords {

    /**
     * One row.
     *
     * @param verdict in words, or 'not known'
     */
    public record Found(String about, String verdict, String says) {}

    private ChargeWords() {}

    /** Only what is too much, a sentence each. */
    public static List<String> stopping(Charging charging) {
        return charging.judgements()
                .filter(judgement -> judgement.verdict() == Verdict.TOO_MUCH)
                .map(judgement -> judgement.about() + ": " + judgement.says())
                .toList();
    }

    /** Worst first, what is missing at the end. */
    public static List<Found> of(Charging charging) {
        Stream<Judgement> ofCables = charging.branches().stream()
                .map(BranchCheck::judgements)
                .flatMap(List::stream)
                .filter(judgement -> judgement.verdict() != Verdict.FINE);
        Stream<Found> found = Stream.concat(charging.others().stream(), ofCables)
                .sorted(Comparator.comparing(Judgement::verdict).reversed())
                .map(each -> new Found(each.about(), each.verdict().says(), each.says()));
        Stream<Found> missing = charging.missing().stream().map(says -> new Found("Missing", "not known", says));
        return Stream.concat(found, missing).toList();
    }
}

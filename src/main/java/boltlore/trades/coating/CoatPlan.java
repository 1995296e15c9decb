package boltlore.trades.coating;

import boltlore.order.Order;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Stream;

/**
 * All that is to be coated for some orders.
 *
 * @param orders earliest need first
 * @param rounds earliest need first
 * @param onHold pieces that nobody has decided about, which are in no batch
 * @param cautions codes of the cautions that the kits ask for on this sheet
 */
public record CoatPlan(List<Order> orders, List<Round> rounds, List<BatchRow> onHold, SortedSet<String> cautions) {

    public List<OvenBatch> batches() {
        return rounds.stream().flatMap(round -> round.batches().stream()).toList();
    }

    public List<SendOut> sendOuts() {
        return rounds.stream().flatMap(round -> round.sendOuts().stream()).toList();
    }

    public List<PowderRun> runs() {
        return rounds.stream().flatMap(round -> round.runs().stream()).toList();
    }

    /** In the order they are cured. */
    public Stream<OvenLoad> loads() {
        return rounds.stream().flatMap(Round::loads);
    }

    /** How often a booth is cleaned down: runs − 1, and 1 more where the first powder is not the one in the booth. */
    public long changeOvers() {
        return runs().stream().filter(run -> run.changeOver() != null).count();
    }

    /** Whether there is nothing to coat and nothing to decide. */
    public boolean isEmpty() {
        return batches().isEmpty() && sendOuts().isEmpty() && onHold.isEmpty();
    }
}

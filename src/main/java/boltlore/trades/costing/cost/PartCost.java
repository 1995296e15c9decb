package boltlore.trades.costing.cost;

import java.util.List;

/** What some of one part cost by themselves: parts inside a made part add their own. */
public record PartCost(List<Work> work, Elements elements) {

    public PartCost {
        work = List.copyOf(work);
    }
}

package boltlore.trades.costing.cost;

import java.util.List;

/** What some of one part cost by themselves: parts inside a made part add their own. */
record PartCost(List<Work> work, Elements elements) {

    PartCost {
        work = List.copyOf(work);
    }
}

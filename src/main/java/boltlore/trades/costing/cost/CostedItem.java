package boltlore.trades.costing.cost;

import boltlore.catalogue.Part;
import boltlore.trades.costing.ItemCost;
import java.util.List;

/** A row of the costed bill with what it costs in full; parts inside a made part have rows of their own. */
public record CostedItem(ItemCost priced, List<Work> work, Elements elements) {

    public CostedItem {
        work = List.copyOf(work);
    }

    public Part part() {
        return priced.item().part();
    }

    CostedItem plus(Elements more) {
        return new CostedItem(priced, work, elements.plus(more));
    }
}

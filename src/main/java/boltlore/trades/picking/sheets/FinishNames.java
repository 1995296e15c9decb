package boltlore.trades.picking.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;

/** Finishes as people say them. */
record FinishNames(Catalogue catalogue) {

    String says(String name) {
        Finish finish = catalogue.finishes().get(name);
        return finish == null ? name : finish.says().english();
    }
}

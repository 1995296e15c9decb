package boltlore.order.json;

import boltlore.catalogue.Catalogue;
import boltlore.json.ObjectReader;

/** Asks for all that an order may say. */
public final class OrderKeys {

    private OrderKeys() {}

    public static void ask(ObjectReader reader, Catalogue catalogue) {
        new OrderReader(catalogue).order(reader);
    }
}

package boltlore.trades.cutting;

import boltlore.catalogue.Catalogue;
import boltlore.json.ObjectReader;

/** Asks for all that a list of remnants may say. */
public final class RemnantKeys {

    private RemnantKeys() {}

    public static void ask(ObjectReader reader, Catalogue catalogue) {
        new RemnantsFile(catalogue).rack(reader);
    }
}

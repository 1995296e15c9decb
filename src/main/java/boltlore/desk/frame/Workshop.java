package boltlore.desk.frame;

import boltlore.book.db.Book;
import boltlore.book.orders.Bench;
import boltlore.catalogue.Family;

/**
 * What all rooms work with.
 *
 * @param bench the catalogue, ready to resolve orders; several may use it at once
 * @param book the open book
 */
public record Workshop(Bench bench, Book book) {

    /** What the kits of a family are called; its code where the catalogue has the family no longer. */
    public String kit(String family) {
        Family known = bench.catalogue().families().get(family);
        return known == null ? family : known.says().english();
    }
}

package boltlore.desk.frame;

import boltlore.book.db.Book;
import boltlore.book.orders.Bench;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;

/**
 * What all rooms work with.
 *
 * @param bench the catalogue, ready to resolve orders; several may use it at once
 * @param book the open book
 */
public record Workshop(Bench bench, Book book) {

    /** What the part is called; empty where the catalogue does not know it any more. */
    public String named(String part) {
        Part known = bench.catalogue().parts().get(new PartNumber(part));
        return known == null ? "" : known.name().english();
    }
}

package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;

/**
 * The first entry of every book.
 *
 * @param id of this book and of all its copies
 */
public record BookBegun(String id) implements Happening {

    static final String KIND = "book begun";

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public Subject subject() {
        return new Subject("book", id);
    }

    @Override
    public JsonOut.Members data() {
        return JsonOut.object();
    }

    static BookBegun read(String id, ObjectReader reader) {
        return new BookBegun(id);
    }
}

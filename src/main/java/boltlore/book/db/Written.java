package boltlore.book.db;

import boltlore.book.Entry;
import java.util.List;

/**
 * What a transaction has left in the book.
 *
 * @param entries in the order of their numbers; none where nothing was to be changed
 * @param clock what is to be said of the desk's clock, or empty
 */
public record Written<T>(T value, List<Entry> entries, String clock) {}

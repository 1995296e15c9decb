package boltlore.book;

/**
 * A reading, a concession or a signature of a kit.
 *
 * @param person key of who made it
 */
public record BuiltNote(String order, long entry, String what, String of, String says, String person) {}

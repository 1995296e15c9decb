package boltlore.book;

/**
 * What an entry is about.
 *
 * @param what kind of thing, in a word: 'order', 'person', 'book'
 * @param name number or key of the one
 */
public record Subject(String what, String name) {

    @Override
    public String toString() {
        return what + " " + name;
    }
}

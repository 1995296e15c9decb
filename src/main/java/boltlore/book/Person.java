package boltlore.book;

import java.util.SortedMap;

/**
 * The data of a person. They stand apart from all else, which names the key, so that they can be listed, handed out and
 * erased while the technical record stays.
 *
 * @param role 'customer' or 'staff'
 * @param details address, telephone and the like by what each is
 * @param since instant at which it was taken down
 * @param erased instant at which it was erased, or empty
 */
public record Person(
        String key, String role, String name, SortedMap<String, String> details, String since, String erased) {

    public static final String CUSTOMER = "customer";
    public static final String STAFF = "staff";

    /** The same with other details. */
    public Person with(SortedMap<String, String> others) {
        return new Person(key, role, name, others, since, erased);
    }

    /** How a person whose data are erased is called. */
    public String shown() {
        return erased.isEmpty() ? name : key + " (erased)";
    }
}

package boltlore.book.db;

import boltlore.book.BookBegun;
import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.book.Person;
import boltlore.book.PersonHappening;
import boltlore.book.PersonHappening.What;
import boltlore.book.Stamp;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jdbi.v3.core.Handle;

/** One transaction: what it adds is in the book together, with all sums, or not at all. */
public final class Writing extends Reading {

    private final Stamp stamp;
    private final List<Entry> added = new ArrayList<>();

    Writing(Handle handle, Stamp stamp) {
        super(handle);
        this.stamp = stamp;
    }

    /** A transaction of that person, who is taken down among the staff where nobody has the name yet. */
    static Writing by(Handle handle, By by) {
        List<Person> known = new Persons(handle).named(by.name(), Person.STAFF);
        Writing writing = new Writing(
                handle,
                new Stamp(
                        by.at(),
                        by.desk(),
                        known.isEmpty()
                                ? new Persons(handle).nextKey()
                                : known.get(0).key()));
        if (writing.journal().last().isEmpty()) {
            writing.add(new BookBegun(UUID.randomUUID().toString()), "");
        }
        if (known.isEmpty()) {
            writing.addPerson(Person.STAFF, by.name(), new TreeMap<>());
        }
        return writing;
    }

    public Stamp stamp() {
        return stamp;
    }

    /**
     * Adds an entry to the journal and to the sums.
     *
     * @param reason why, in the words of who does it; may be empty
     */
    public Entry add(Happening happening, String reason) {
        Entry entry = journal().add(stamp, happening, reason);
        Sums.take(handle(), entry, happening);
        added.add(entry);
        return entry;
    }

    /** Keeps a content for the entry that is added next; tells its hash. */
    public String keep(byte[] content) {
        return contents().keep(content, journal().last().map(Entry::number).orElse(0L) + 1);
    }

    /** Takes down a new person. */
    public Person addPerson(String role, String name, SortedMap<String, String> details) {
        Person person =
                new Person(persons().nextKey(), role, name, new TreeMap<>(details), Entry.written(stamp.at()), "");
        persons().put(person);
        add(new PersonHappening(person.key(), What.ADDED, role), "");
        return person;
    }

    /** Puts other data in the place of a person's. */
    public void changePerson(Person person, What what, String reason) {
        persons().put(person);
        add(new PersonHappening(person.key(), what, person.role()), reason);
    }

    List<Entry> added() {
        return List.copyOf(added);
    }
}

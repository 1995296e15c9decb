package boltlore.book.orders;

import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.OrderStanding;
import boltlore.book.Person;
import boltlore.book.PersonHappening.What;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Transfer;
import boltlore.book.db.Written;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The calls on the data of persons: what is held of somebody, its correction, handing it out and erasing it (Regulation
 * (EU) 2016/679, articles 15 to 17 and 20). The technical record names keys only and stays as it is.
 */
public final class PersonDesk {

    /** A word of fewer letters stands in too many others. */
    private static final int LEAST_OF_NAME = 3;

    private static final int LEAST_OF_DETAIL = 6;

    private static final int MOST_NAMING = 1000;

    private final Book book;
    private final By by;

    public PersonDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /** Takes somebody of the staff down, once. */
    public Outcome<Written<Person>> add(String name, String reason) {
        return book.write(by, writing -> {
            List<Person> known = writing.persons().named(name, Person.STAFF);
            return known.isEmpty()
                    ? Outcome.sound(writing.addPerson(Person.STAFF, name, new TreeMap<>()))
                    : Outcome.faulty(Fault.of(
                            "person " + known.get(0).key(),
                            "'" + name + "', who is there already",
                            "somebody whom the book does not know yet",
                            reason.isBlank() ? "" : "Nothing was written."));
        });
    }

    /** Puts a name or details in the place of those that are there; an empty detail is taken away. */
    public Outcome<Written<Person>> change(
            String key, @Nullable String name, SortedMap<String, String> details, String reason) {
        return book.write(
                by,
                writing -> known(writing, key).then(person -> {
                    SortedMap<String, String> all = new TreeMap<>(person.details());
                    all.putAll(details);
                    all.values().removeIf(String::isEmpty);
                    Person changed = new Person(
                            key,
                            person.role(),
                            name == null ? person.name() : name,
                            all,
                            person.since(),
                            person.erased());
                    writing.changePerson(changed, What.CHANGED, reason);
                    return Outcome.sound(changed);
                }));
    }

    /** All that the book holds of a person, as a text to hand out; that it was handed out is in the journal. */
    public Outcome<Written<String>> handOut(String key) {
        return book.write(
                by,
                writing -> known(writing, key).then(person -> {
                    writing.changePerson(person, What.EXPORTED, "");
                    return Outcome.sound(Transfer.person(person)
                            .put("orders", JsonOut.list(writing.orders().ofCustomer(key), PersonDesk::order))
                            .put("entries", writing.journal().countBy(key))
                            .put("named", JsonOut.list(naming(writing, person), OrderJson::entry))
                            .written());
                }));
    }

    private static JsonOut order(OrderStanding order) {
        return JsonOut.object()
                .put("order", order.name())
                .put("family", order.family())
                .put("state", order.state().written())
                .putIfAny("due", order.due());
    }

    /**
     * Entries whose own words hold the person's name, the last word of it or a detail: somebody has typed it there, as a
     * reason or a note, and what stands in the journal stays.
     */
    public static List<Entry> naming(Reading reading, Person person) {
        String[] name = person.name().strip().split("\\s+", -1);
        List<String> words = Stream.concat(
                        Stream.of(person.name().strip(), name[name.length - 1])
                                .filter(word -> word.length() >= LEAST_OF_NAME),
                        person.details().values().stream().filter(word -> word.length() >= LEAST_OF_DETAIL))
                .distinct()
                .toList();
        if (words.isEmpty()) {
            return List.of();
        }
        Pattern whole = Pattern.compile(
                words.stream()
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}])(?:", ")(?![\\p{L}\\p{N}])")),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        return reading.journal().withWords(words, MOST_NAMING).stream()
                .filter(entry -> whole.matcher(String.join(
                                " ",
                                entry.reason(),
                                entry.data(),
                                entry.subject().name(),
                                entry.stamp().desk()))
                        .find())
                .toList();
    }

    /**
     * What was erased.
     *
     * @param naming entries whose words hold the name still
     */
    public record Erased(Person person, List<Entry> naming) {}

    /** Erases name and details; the key stays, so that orders and entries still say that it was one and the same. */
    public Outcome<Written<Erased>> erase(String key, String reason) {
        if (reason.isBlank()) {
            return Outcome.faulty(Fault.of("person " + key, "no reason", "why the data are erased", "Add --reason."));
        }
        Outcome<Written<Erased>> erased = book.write(
                by,
                writing -> known(writing, key)
                        .then(person -> withoutName(person, reason))
                        .then(person -> {
                            Person nobody = new Person(
                                    key,
                                    person.role(),
                                    "",
                                    new TreeMap<>(),
                                    person.since(),
                                    Entry.written(writing.stamp().at()));
                            List<Entry> naming = naming(writing, person);
                            writing.changePerson(nobody, What.ERASED, reason);
                            return Outcome.sound(new Erased(nobody, naming));
                        }));
        if (erased.faults().isEmpty()) {
            book.sweep();
        }
        return erased;
    }

    /** The reason stays in the journal for good. */
    private static Outcome<Person> withoutName(Person person, String reason) {
        String name = person.name().toLowerCase(Locale.ROOT);
        return name.isEmpty() || !reason.toLowerCase(Locale.ROOT).contains(name)
                ? Outcome.sound(person)
                : Outcome.faulty(Fault.of(
                        "person " + person.key(),
                        "a reason that holds the name that is to be erased",
                        "the reason without the name: it stays in the book",
                        "Name the person by the key, as '" + person.key() + "'."));
    }

    public static Outcome<Person> known(Reading reading, String key) {
        return reading.persons()
                .find(key)
                .filter(person -> person.erased().isEmpty())
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "",
                        "the key '" + key + "'",
                        "the key of a person whose data the book holds",
                        "'boltlore person list' shows them.")));
    }
}

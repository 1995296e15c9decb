package boltlore.book.db;

import boltlore.book.Person;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Data of persons by their keys. They are no sum over the journal, which knows keys only. */
public final class Persons {

    private static final String NUMBER = "cast(substr(person, 3) as integer)";

    private static final String MATCHING =
            " where (:words = '' or person = :words or lower(name) like :like escape '\\')";

    private final Handle handle;

    Persons(Handle handle) {
        this.handle = handle;
    }

    public Optional<Person> find(String key) {
        return handle.createQuery("select * from person where person = ?")
                .bind(0, key)
                .map((row, context) -> person(row))
                .findOne();
    }

    /** All that have just this name in this role; those whose data are erased have none. */
    public List<Person> named(String name, String role) {
        return handle.createQuery("select * from person where name = ? and role = ? and erased = '' order by person")
                .bind(0, name)
                .bind(1, role)
                .map((row, context) -> person(row))
                .list();
    }

    public List<Person> all() {
        return handle.createQuery("select * from person order by " + NUMBER)
                .map((row, context) -> person(row))
                .list();
    }

    /** The names of all in a role, in the order in which they came; of those whose data are erased there are none. */
    public List<String> names(String role) {
        return handle.createQuery("select name from person where role = ? and name <> '' order by " + NUMBER)
                .bind(0, role)
                .mapTo(String.class)
                .list();
    }

    /**
     * Some of those whose name holds some words, whatever the case, or whose key they are; all where there are no words.
     *
     * @param from how many are left out before them
     */
    public List<Person> with(String words, int from, int most) {
        return matching("select * from person", words)
                .bind("from", from)
                .bind("most", most)
                .map((row, context) -> person(row))
                .list();
    }

    /** How many there are of those. */
    public int count(String words) {
        return handle.createQuery("select count(*) from person" + MATCHING)
                .bind("words", words)
                .bind("like", like(words))
                .mapTo(Integer.class)
                .one();
    }

    private Query matching(String select, String words) {
        return handle.createQuery(select + MATCHING + " order by " + NUMBER + " limit :most offset :from")
                .bind("words", words)
                .bind("like", like(words));
    }

    /** Signs that stand for others in a pattern stand for themselves. */
    private static String like(String words) {
        return "%" + words.toLowerCase(Locale.ROOT).replaceAll("([\\\\%_])", "\\\\$1") + "%";
    }

    /** What stands for a person of whom nothing is known. */
    public String shown(String key) {
        return find(key).map(Person::shown).orElse(key);
    }

    /** What stands for each of them, asked for at once. */
    public Map<String, String> shown(Collection<String> keys) {
        Map<String, String> shown = new HashMap<>();
        keys.forEach(key -> shown.put(key, key));
        if (!shown.isEmpty()) {
            handle.createQuery("select * from person where person in (<keys>)")
                    .bindList("keys", List.copyOf(shown.keySet()))
                    .map((row, context) -> person(row))
                    .forEach(person -> shown.put(person.key(), person.shown()));
        }
        return shown;
    }

    String nextKey() {
        int last = handle.createQuery("select coalesce(max(" + NUMBER + "), 0) from person")
                .mapTo(Integer.class)
                .one();
        return "P-" + (last + 1);
    }

    /** Puts the data in the place of those that are there. */
    void put(Person person) {
        handle.execute(
                "insert into person (person, role, name, details, since, erased) values (?, ?, ?, ?, ?, ?)"
                        + " on conflict (person) do update set role = excluded.role, name = excluded.name,"
                        + " details = excluded.details, since = excluded.since, erased = excluded.erased",
                person.key(),
                person.role(),
                person.name(),
                details(person.details()),
                person.since(),
                person.erased());
    }

    private static String details(SortedMap<String, String> details) {
        JsonOut.Members members = JsonOut.object();
        details.forEach(members::put);
        return members.writtenInLine();
    }

    private static SortedMap<String, String> details(String written) {
        SortedMap<String, String> details = new TreeMap<>();
        Outcome<Json> json = JsonFile.parse("person", written.getBytes(StandardCharsets.UTF_8));
        if (json instanceof Outcome.Sound<Json> sound && sound.value() instanceof Json.Obj members) {
            members.members().forEach((key, value) -> {
                if (value instanceof Json.Text text) {
                    details.put(key, text.text());
                }
            });
        }
        return details;
    }

    private static Person person(ResultSet row) throws SQLException {
        return new Person(
                row.getString("person"),
                row.getString("role"),
                row.getString("name"),
                details(row.getString("details")),
                row.getString("since"),
                row.getString("erased"));
    }
}

package boltlore.book.db;

import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.book.PurchaseHappening;
import boltlore.book.Stamp;
import boltlore.book.Subject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** The journal's entries; they are added and read, never changed. */
public final class Journal {

    private static final int AT_ONCE = 1000;

    private final Handle handle;

    Journal(Handle handle) {
        this.handle = handle;
    }

    public Optional<Entry> last() {
        return handle.createQuery("select * from journal order by number desc limit 1")
                .map((row, context) -> entry(row))
                .findOne();
    }

    public Optional<Entry> entry(long number) {
        return handle.createQuery("select * from journal where number = ?")
                .bind(0, number)
                .map((row, context) -> entry(row))
                .findOne();
    }

    /** All of one subject, the first one first. */
    public List<Entry> of(Subject subject) {
        return handle.createQuery("select * from journal where what = ? and name = ? order by number")
                .bind(0, subject.what())
                .bind(1, subject.name())
                .map((row, context) -> entry(row))
                .list();
    }

    /** Those after a number, at most so many. */
    public List<Entry> after(long number, int most) {
        return handle.createQuery("select * from journal where number > ? order by number limit ?")
                .bind(0, number)
                .bind(1, most)
                .map((row, context) -> entry(row))
                .list();
    }

    /** Of which kinds the entries after a number are; of very many only the first ones are looked at. */
    public Set<String> kindsAfter(long number) {
        return handle.createQuery("select distinct kind from (select kind from journal where number > ?"
                        + " order by number limit ?) as some")
                .bind(0, number)
                .bind(1, AT_ONCE)
                .mapTo(String.class)
                .set();
    }

    /** The number of the purchase order that was placed with an entry, in the same call; none where it stands alone. */
    public Optional<String> purchaseWith(Entry entry) {
        return handle.createQuery("select name from journal where kind = ? and at = ? and number < ?"
                        + " order by number desc limit 1")
                .bind(0, PurchaseHappening.Placed.KIND)
                .bind(1, Entry.written(entry.stamp().at()))
                .bind(2, entry.number())
                .mapTo(String.class)
                .findOne();
    }

    /**
     * Entries in whose own words one of these stands, whatever the case of the letters a to z: as reason, name or desk, or in
     * what they say. All of a long journal is looked through.
     *
     * @param most at most so many, the first one first
     */
    public List<Entry> withWords(List<String> words, int most) {
        String any = IntStream.range(0, words.size())
                .mapToObj(i -> "lower(reason || ' ' || data || ' ' || name || ' ' || desk) like lower(:like" + i
                        + ") escape '!'")
                .collect(Collectors.joining(" or "));
        Query query = handle.createQuery("select * from journal where " + any + " order by number limit :most")
                .bind("most", most);
        for (int i = 0; i < words.size(); i++) {
            query.bind("like" + i, "%" + words.get(i).replaceAll("([!%_])", "!$1") + "%");
        }
        return query.map((row, context) -> entry(row)).list();
    }

    /** How many entries somebody has made. */
    public long countBy(String person) {
        return handle.createQuery("select count(*) from journal where person = ?")
                .bind(0, person)
                .mapTo(Long.class)
                .one();
    }

    /** Each entry in turn; of a long journal only a few are held at a time. */
    public void each(Consumer<Entry> taken) {
        long last = 0;
        List<Entry> some = after(last, AT_ONCE);
        while (!some.isEmpty()) {
            some.forEach(taken);
            last = some.get(some.size() - 1).number();
            some = after(last, AT_ONCE);
        }
    }

    Entry add(Stamp stamp, Happening happening, String reason) {
        Optional<Entry> last = last();
        Entry entry = Entry.following(
                last.map(Entry::number).orElse(0L),
                last.map(Entry::chain).orElse(Entry.NO_CHAIN),
                stamp,
                happening,
                reason);
        insert(Stream.of(entry));
        return entry;
    }

    void insert(Stream<Entry> entries) {
        try (var batch = handle.prepareBatch("insert into journal values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
            entries.forEach(entry -> batch.add(
                    entry.number(),
                    Entry.written(entry.stamp().at()),
                    entry.stamp().desk(),
                    entry.stamp().person(),
                    entry.subject().what(),
                    entry.subject().name(),
                    entry.kind(),
                    entry.data(),
                    entry.reason(),
                    entry.chain()));
            batch.execute();
        }
    }

    private static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                row.getLong("number"),
                new Stamp(Instant.parse(row.getString("at")), row.getString("desk"), row.getString("person")),
                new Subject(row.getString("what"), row.getString("name")),
                row.getString("kind"),
                row.getString("data"),
                row.getString("reason"),
                row.getString("chain"));
    }
}

package boltlore.book.db;

import boltlore.book.Entry;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.jdbi.v3.core.Handle;

/** What the tables of a book hold, as a sum of each; two books that hold the same have the same sums, in any database. */
public final class Tables {

    /** The truth, beside the sums that follow from it. */
    private static final List<String> TRUTH = List.of("journal number", "content hash", "person person");

    private Tables() {}

    /** SHA-256 over all rows of each table, by the table's name. */
    public static Map<String, String> of(Book book) {
        return book.read(reading -> {
            Map<String, String> sums = digests(reading.handle(), TRUTH);
            sums.putAll(digests(reading.handle(), Sums.tables()));
            return sums;
        });
    }

    /**
     * Reads the journal from its first entry to the last and makes all sums anew.
     *
     * @param keep whether the new sums take the place of the old ones
     * @return the tables that were not as the journal says; faulty where the journal itself is not sound
     */
    public static Outcome<List<String>> remade(Book book, boolean keep) {
        List<String> differ = new ArrayList<>();
        Outcome<List<String>> outcome = book.transactionOutcome(true, handle -> {
            differ.clear();
            Map<String, String> before = digests(handle, Sums.tables());
            Sums.tables().forEach(table -> handle.execute("delete from " + name(table)));
            Outcome<Long> replayed = replay(handle);
            if (!replayed.faults().isEmpty()) {
                return Outcome.faulty(replayed.faults());
            }
            Map<String, String> after = digests(handle, Sums.tables());
            before.forEach((table, sum) -> {
                if (!sum.equals(after.get(table))) {
                    differ.add(table);
                }
            });
            return keep ? Outcome.sound(List.copyOf(differ)) : Outcome.faulty(NOT_KEPT);
        });
        return outcome.faults().equals(List.of(NOT_KEPT)) ? Outcome.sound(List.copyOf(differ)) : outcome;
    }

    /** Undoes what was only tried. */
    private static final Fault NOT_KEPT = Fault.of("", "sums made anew to look at them", "", "");

    private static Outcome<Long> replay(Handle handle) {
        AtomicLong last = new AtomicLong();
        List<Fault> faults = new ArrayList<>();
        String[] chain = {Entry.NO_CHAIN};
        new Journal(handle).each(entry -> {
            if (!faults.isEmpty()) {
                return;
            }
            if (!entry.follows(last.get(), chain[0])) {
                faults.add(
                        Fault.of(
                                "entry " + entry.number(),
                                "an entry that was changed, or does not follow entry " + last.get(),
                                "the entries of one journal in their order, each as it was written",
                                "Somebody wrote into the database by hand, or it is damaged: restore the last backup beside it."));
            }
            last.set(entry.number());
            chain[0] = entry.chain();
            faults.addAll(Sums.take(handle, entry).faults());
        });
        return faults.isEmpty() ? Outcome.sound(last.get()) : Outcome.faulty(faults);
    }

    private static String name(String table) {
        return table.split(" ", 2)[0];
    }

    private static Map<String, String> digests(Handle handle, List<String> tables) {
        Map<String, String> sums = new LinkedHashMap<>();
        for (String table : tables) {
            String keys = String.join(", ", table.split(" ", 2)[1].split(" "));
            MessageDigest digest = sha256();
            handle.createQuery("select * from " + name(table) + " order by " + keys)
                    .setFetchSize(1000)
                    .map((row, context) -> {
                        add(digest, row, context.getStatement().getMetaData().getColumnCount());
                        return 1;
                    })
                    .useIterator(rows -> rows.forEachRemaining(row -> {}));
            sums.put(name(table), HexFormat.of().formatHex(digest.digest()));
        }
        return sums;
    }

    private static void add(MessageDigest digest, ResultSet row, int columns) throws SQLException {
        boolean packed = row.getMetaData().getColumnName(columns).equals("bytes");
        for (int i = 1; i <= (packed ? columns - 1 : columns); i++) {
            digest.update(String.valueOf(row.getString(i)).getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}

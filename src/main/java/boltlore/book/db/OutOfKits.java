package boltlore.book.db;

import boltlore.book.Held;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** What is looked for and is in no kit. */
final class OutOfKits {

    private final Handle handle;

    OutOfKits(Handle handle) {
        this.handle = handle;
    }

    /**
     * What of it is in no kit: lies in the stores, or came in with that serial number and lies nowhere that the book knows,
     * because it is lost, scrapped or handed out. Of a revision or a drawing nobody writes that down.
     */
    List<String> of(AsBuilt.Asked asked) {
        if (!asked.drawing().isEmpty()) {
            return List.of();
        }
        List<String> found = new ArrayList<>();
        new Stock(handle)
                .all().stream()
                        .filter(row -> fits(asked.part(), row.held().part())
                                && fits(asked.serial(), row.held().serial())
                                && fits(asked.lot(), row.held().lot())
                                && fits(asked.heat(), row.held().lot()))
                        .map(row -> row.quantity().toPlainString() + " of " + row.held())
                        .forEach(found::add);
        if (!asked.serial().isEmpty() && found.isEmpty()) {
            handle
                    .createQuery("select part, serial, purchase from received_serial where lower(serial) = lower(?)")
                    .bind(0, asked.serial())
                    .map((row, context) -> new Held(row.getString(1), "", "", row.getString(2), ""))
                    .list()
                    .stream()
                    .filter(held -> fits(asked.part(), held.part()))
                    .map(held -> held + ", which came in and lies there no more")
                    .forEach(found::add);
        }
        return found;
    }

    private static boolean fits(String asked, String there) {
        return asked.isEmpty() || asked.equalsIgnoreCase(there);
    }

    /** Whether any kit, store or purchase order of the book has that part, however it is written. */
    boolean knowsPart(String part) {
        return Stream.of("kit_line", "stock", "built_part", "issued_part", "purchase_line")
                .anyMatch(
                        table -> handle.createQuery("select 1 from " + table + " where lower(part) = lower(?) limit 1")
                                .bind(0, part)
                                .mapTo(Integer.class)
                                .findFirst()
                                .isPresent());
    }
}

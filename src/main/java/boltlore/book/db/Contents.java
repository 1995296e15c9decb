package boltlore.book.db;

import boltlore.book.Entry;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jdbi.v3.core.Handle;

/** Files and lists that entries stand on, each kept once under its SHA-256, packed (RFC 1952). */
public final class Contents {

    private final Handle handle;

    Contents(Handle handle) {
        this.handle = handle;
    }

    /**
     * What was kept under that hash.
     *
     * @throws IllegalStateException where nothing was: an entry never names what the book does not hold
     */
    public byte[] of(String hash) {
        return handle.createQuery("select bytes from content where hash = ?")
                .bind(0, hash)
                .map((row, context) -> unpacked(row.getBytes(1)))
                .findOne()
                .orElseThrow(() -> new IllegalStateException("No content " + hash));
    }

    boolean has(String hash) {
        return handle.createQuery("select 1 from content where hash = ?")
                .bind(0, hash)
                .mapTo(Integer.class)
                .findOne()
                .isPresent();
    }

    /** Hashes of what came with an entry, sorted. */
    List<String> with(long entry) {
        return handle.createQuery("select hash from content where entry = ? order by hash")
                .bind(0, entry)
                .mapTo(String.class)
                .list();
    }

    /** Keeps it for the entry with that number, unless it is kept already; tells its hash. */
    String keep(byte[] content, long entry) {
        String hash = Entry.sha256(content);
        if (!has(hash)) {
            handle.execute("insert into content (hash, entry, bytes) values (?, ?, ?)", hash, entry, packed(content));
        }
        return hash;
    }

    private static byte[] packed(byte[] content) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(content);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Writing to memory", impossible);
        }
        return packed.toByteArray();
    }

    private static byte[] unpacked(byte[] packed) {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return in.readAllBytes();
        } catch (IOException damaged) {
            throw new UncheckedIOException("A content of the book is damaged", damaged);
        }
    }
}

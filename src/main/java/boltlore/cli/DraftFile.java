package boltlore.cli;

import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.order.json.OrderWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Where an interview is kept while it goes on: written anew after every answer, so that nothing that breaks it off loses
 * one. It is an order file like any other, with some choices missing.
 */
final class DraftFile {

    private static final String ENDING = ".draft.json";

    private final Path file;
    private boolean written;

    private DraftFile(Path file, boolean written) {
        this.file = file;
        this.written = written;
    }

    /**
     * Goes on in the draft that the interview began with; else takes a name that no file has.
     *
     * @param source the file that the interview began with, or null
     * @param out the file that the order will be written to, or null
     */
    static DraftFile of(@Nullable Path source, @Nullable Path out, Order order) {
        if (source != null && isDraft(source)) {
            return new DraftFile(source, true);
        }
        Path named = out != null ? out : source != null ? source : Path.of(name(order));
        String stem = named.getFileName().toString().replaceFirst("\\.json$", "");
        Path file = named.resolveSibling(stem + ENDING);
        for (int i = 2; Files.exists(file); i++) {
            file = named.resolveSibling(stem + "-" + i + ENDING);
        }
        return new DraftFile(file, false);
    }

    private static String name(Order order) {
        return order.name().equals(OrderBuilder.NO_NUMBER)
                ? order.family()
                : order.name().toLowerCase(Locale.ROOT);
    }

    static boolean isDraft(Path file) {
        return file.getFileName().toString().endsWith(ENDING);
    }

    /** False where it could not be written. */
    boolean keep(Order order) {
        Path whole = file.toAbsolutePath();
        Path aside = whole.resolveSibling("." + whole.getFileName() + ".new");
        try {
            Files.createDirectories(whole.getParent());
            Files.write(aside, OrderWriter.write(order).getBytes(StandardCharsets.UTF_8));
            Files.move(aside, whole, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            written = true;
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** The order is written: nothing is left to keep. */
    void drop() {
        try {
            if (written) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // A draft that stays behind does no harm: nothing but 'ask' reads it.
        }
    }

    String says() {
        return written
                ? "Draft kept in " + file + ". 'boltlore ask " + file + "' goes on from it; 'boltlore choose " + file
                        + "' says what it may come to."
                : "Nothing was answered, so nothing is kept.";
    }
}

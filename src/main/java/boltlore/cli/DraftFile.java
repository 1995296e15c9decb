package boltlore.cli;

import boltlore.exports.KeptFile;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.order.json.OrderWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where an interview is kept while it goes on: written anew after every answer, so that nothing that breaks it off loses
 * one. It is an order file like any other, with some choices missing. No other interview's draft is ever replaced.
 */
final class DraftFile {

    private static final String ENDING = ".draft.json";

    private final KeptFile kept;
    private final @Nullable Path given;
    private final Path schemas;
    private @Nullable Path named;

    private DraftFile(KeptFile kept, @Nullable Path given, Path schemas) {
        this.kept = kept;
        this.given = given;
        this.schemas = schemas;
        this.named = given;
    }

    /**
     * Goes on in the draft that the interview began with; else takes a name that no file has, as soon as there is
     * something to keep.
     *
     * @param source the file that the interview began with, or null
     * @param out the file that the order will be written to, or null
     * @param schemas the folder of the catalogue's schemas
     */
    static DraftFile of(@Nullable Path source, @Nullable Path out, Path schemas) {
        try {
            return source != null && isDraft(source)
                    ? new DraftFile(new KeptFile(source), source, schemas)
                    : new DraftFile(new KeptFile(), out != null ? out : source, schemas);
        } catch (IOException unreadable) {
            return new DraftFile(new KeptFile(), source, schemas);
        }
    }

    /** Without a file that says otherwise the order's number, as soon as it is known. */
    private Path named(Order order) {
        boolean numbered = !order.name().equals(OrderBuilder.NO_NUMBER);
        return given != null ? given : Path.of(numbered ? order.name().toLowerCase(Locale.ROOT) : order.family());
    }

    static boolean isDraft(Path file) {
        return file.getFileName().toString().endsWith(ENDING);
    }

    /** False where it could not be written. */
    boolean keep(Order order) {
        Path name = named(order);
        Path file = sibling(name, 0);
        byte[] text = text(order, file, schemas);
        try {
            if (name.equals(named)) {
                kept.write(text, time -> sibling(name, time));
            } else {
                kept.writeElsewhere(text, time -> sibling(name, time));
                named = name;
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** The order's text as it stands in that file. */
    static byte[] text(Order order, Path file, Path schemas) {
        Path from = Objects.requireNonNull(file.toAbsolutePath().normalize().getParent());
        Path to = schemas.toAbsolutePath().normalize();
        String way = Objects.equals(from.getRoot(), to.getRoot())
                ? from.relativize(to).toString().replace('\\', '/')
                : to.toUri().toString().replaceFirst("/$", "");
        return OrderWriter.write(order, way).getBytes(StandardCharsets.UTF_8);
    }

    private static Path sibling(Path named, int time) {
        String stem = named.getFileName().toString().replaceFirst("(\\.draft)?\\.json$", "");
        return named.resolveSibling(stem + (time == 0 ? "" : "-" + (time + 1)) + ENDING);
    }

    /** The order is written: nothing is left to keep. */
    void drop() {
        try {
            kept.delete();
        } catch (IOException e) {
            // A draft that stays behind does no harm: nothing but 'ask' reads it.
        }
    }

    String says() {
        return kept.file()
                .map(file -> "Draft kept in " + file + ". 'boltlore ask " + file
                        + "' goes on from it; 'boltlore choose " + file + "' says what it may come to.")
                .orElse("Nothing was answered, so nothing is kept.");
    }
}

package boltlore.book.orders;

import boltlore.book.db.Book;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.function.Function;
import java.util.stream.Stream;

/** A catalogue as it was, laid out in a temporary folder for as long as somebody works with it. */
public final class KeptBench {

    private KeptBench() {}

    /** The same, where the present catalogue is that one still without laying it out again. */
    public static <T> Outcome<T> of(Book book, Bench present, String catalogue, Function<Bench, Outcome<T>> work) {
        return KeptCatalogue.of(present.folder(), present.catalogue())
                .then(kept -> kept.hash().equals(catalogue) ? work.apply(present) : with(book, catalogue, work));
    }

    /**
     * Works with the catalogue that was kept under that hash.
     *
     * @return faulty also where this program cannot read so old a catalogue any more
     */
    public static <T> Outcome<T> with(Book book, String catalogue, Function<Bench, Outcome<T>> work) {
        return laidOut(
                folder -> book.read(reading -> {
                    try {
                        KeptCatalogue.lay(reading.contents(), catalogue, folder);
                        return true;
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }),
                folder -> CatalogueReader.read(folder).then(read -> work.apply(Bench.of(read, folder))));
    }

    /** Lays a kept catalogue out in a folder. */
    interface Laying {
        void into(Path folder) throws IOException;
    }

    /** Lays a kept catalogue out, works with its folder and takes that away again. */
    static <T> Outcome<T> laidOut(Laying laying, Function<Path, Outcome<T>> work) {
        try {
            Path folder = Files.createTempDirectory("boltlore-catalogue");
            try {
                laying.into(folder);
                return work.apply(folder);
            } finally {
                delete(folder);
            }
        } catch (IOException | UncheckedIOException e) {
            return Outcome.faulty(Fault.of(
                    System.getProperty("java.io.tmpdir", ""),
                    "no room for the catalogue as it was",
                    "a folder for temporary files that may be written",
                    "Make room there; nothing was changed."));
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}

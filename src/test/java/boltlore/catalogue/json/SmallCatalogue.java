package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of a small sound catalogue, to be spoilt in one way. */
final class SmallCatalogue {

    private static final Path SOUND = Path.of("src/test/resources/small");

    private final Path folder;

    private SmallCatalogue(Path folder) {
        this.folder = folder;
    }

    static SmallCatalogue in(Path folder) {
        try (Stream<Path> all = Files.walk(SOUND)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(SOUND.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return new SmallCatalogue(folder);
    }

    /** Changes one spot of one file; the text to be changed must stand there exactly once. */
    SmallCatalogue change(String file, String from, String to) {
        String text = text(file);
        int at = text.indexOf(from);
        if (at < 0 || text.indexOf(from, at + 1) >= 0) {
            throw new IllegalArgumentException("Not exactly once in " + file + ": " + from);
        }
        return write(file, text.replace(from, to));
    }

    SmallCatalogue write(String file, String text) {
        try {
            Path path = folder.resolve(file);
            Files.createDirectories(path.getParent());
            Files.writeString(path, text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return this;
    }

    SmallCatalogue remove(String file) {
        try {
            Files.delete(folder.resolve(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return this;
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    Catalogue catalogue() {
        if (CatalogueReader.read(folder) instanceof Outcome.Sound<Catalogue> sound) {
            return sound.value();
        }
        throw new AssertionError(faults().toString());
    }

    /** The faults with files named from within the catalogue. */
    List<Fault> faults() {
        return CatalogueReader.read(folder).faults().stream()
                .map(this::fromWithin)
                .toList();
    }

    private Fault fromWithin(Fault fault) {
        return new Fault(
                fromWithin(fault.file()),
                fault.line(),
                fault.place(),
                fromWithin(fault.found()),
                fault.expected(),
                fault.advice());
    }

    private String fromWithin(String text) {
        String inside = text.replace(folder.toString(), "").replace('\\', '/');
        return inside.startsWith("/") ? inside.substring(1) : inside.replace(" /", " ");
    }
}

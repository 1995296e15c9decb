package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.catalogue.json.PartlyRead;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A copy of the demo catalogue with one thing changed in it, and what the checks say of it. */
final class PlantedDemo {

    private PlantedDemo() {}

    /** Subject and check of each remark, with one text of a file replaced wherever it stands there. */
    static List<String> remarks(Path folder, String file, String from, String to) throws IOException {
        plant(folder, file, from, to);
        return said(CatalogueReader.read(folder));
    }

    /** What is said of as much as can be read, where that change is one that cannot. */
    static List<Remark> ofTheRest(Path folder, String file, String from, String to) throws IOException {
        plant(folder, file, from, to);
        if (CatalogueReader.readAsFar(folder) instanceof Outcome.Sound<PartlyRead> sound) {
            PartlyRead read = sound.value();
            assertThat(read.whole().faults()).isNotEmpty();
            return Checks.checkRest(read.rest(), read.faulty(), read.workshopKnown(), read.familiesKnown());
        }
        throw new AssertionError("nothing can be read of " + folder);
    }

    private static void plant(Path folder, String file, String from, String to) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(
                        each, folder.resolve(Path.of("catalog").relativize(each)), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    /** The same, where the text stands behind another on its line: a key of one part. */
    static List<String> remarks(Path folder, String file, String line, String from, String to) throws IOException {
        String whole = Files.readString(Path.of("catalog").resolve(file))
                .lines()
                .filter(each -> each.contains(line) && each.contains(from))
                .findFirst()
                .orElseThrow(() -> new AssertionError(line + " ... " + from));
        return remarks(folder, file, whole, whole.replace(from, to));
    }

    /** Whether a check tells a slip; only that check is compared, for the same slip may show in another, too. */
    static void told(Path folder, Check check, String file, String line, String from, String to, @Nullable String about)
            throws IOException {
        assertThat(remarks(folder, file, line, from, to))
                .filteredOn(remark -> remark.endsWith(": " + check.written()))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + check.written()));
    }

    private static List<String> said(Outcome<Catalogue> read) {
        if (read instanceof Outcome.Sound<Catalogue> sound) {
            return Checks.check(sound.value()).stream()
                    .map(remark -> remark.about() + ": " + remark.check().written())
                    .toList();
        }
        throw new AssertionError(read.faults().toString());
    }
}

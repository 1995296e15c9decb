package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Document;
import boltlore.catalogue.Family;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Every file that a document names lies within the catalogue folder; a link that leads out of it will not do. */
final class DocumentFiles {

    private final Path folder;
    private final Reading reading;

    private DocumentFiles(Path folder, Reading reading) {
        this.folder = folder;
        this.reading = reading;
    }

    static void check(Path folder, Catalogue catalogue, Reading reading) {
        DocumentFiles files = new DocumentFiles(folder, reading);
        Stream.concat(
                        catalogue.parts().values().stream().flatMap(part -> part.upkeep().documents().stream()),
                        catalogue.families().values().stream().flatMap(DocumentFiles::ofPositions))
                .forEach(files::check);
    }

    private static Stream<Document> ofPositions(Family family) {
        return family.positions().stream().flatMap(position -> position.documents().stream());
    }

    private void check(Document document) {
        if (document.file() == null || !Shapes.FILE.fits().test(document.file())) {
            return;
        }
        Path file = folder.resolve(document.file());
        if (!Files.exists(file)) {
            refuse(
                    document,
                    "which is not there",
                    "Put the file there, correct its name, or give only the 'number' it is filed under.");
        } else if (!Files.isRegularFile(file)) {
            refuse(document, "which is a folder", "Name a file in it.");
        } else if (!isWithin(file)) {
            refuse(
                    document,
                    "which is a link that leads out of the folder",
                    "Put the file itself there: a catalogue is copied and sent as it is.");
        }
    }

    private boolean isWithin(Path file) {
        try {
            return file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException gone) {
            return false;
        }
    }

    private void refuse(Document document, String found, String advice) {
        reading.faults()
                .add(reading.sources()
                        .of(document)
                        .fault("'" + document.file() + "', " + found, "a file within the catalogue folder", advice));
    }
}

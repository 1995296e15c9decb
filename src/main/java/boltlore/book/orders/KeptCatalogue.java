package boltlore.book.orders;

import boltlore.book.Entry;
import boltlore.book.db.Contents;
import boltlore.book.db.Writing;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Document;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A catalogue as the book keeps it: a list of its files, each by the hash of its content. Of two catalogues that differ in
 * one file only that file is kept twice.
 *
 * @param files content by path within the folder
 */
record KeptCatalogue(SortedMap<String, byte[]> files) {

    /** All files of a catalogue that was read from a folder, its documents too. */
    static Outcome<KeptCatalogue> of(Path folder, Catalogue catalogue) {
        return CatalogueReader.files(folder).then(found -> {
            SortedMap<String, Path> all = new TreeMap<>(found);
            documents(catalogue).forEach(file -> all.put(file, folder.resolve(file)));
            SortedMap<String, byte[]> contents = new TreeMap<>();
            for (Map.Entry<String, Path> file : all.entrySet()) {
                try {
                    contents.put(file.getKey(), Files.readAllBytes(file.getValue()));
                } catch (IOException e) {
                    return Outcome.faulty(Fault.of(
                            file.getValue().toString(), "a file that cannot be read", "a readable file", "Try again."));
                }
            }
            return Outcome.sound(new KeptCatalogue(contents));
        });
    }

    private static Stream<String> documents(Catalogue catalogue) {
        Stream<Document> ofParts =
                catalogue.parts().values().stream().flatMap(part -> part.upkeep().documents().stream());
        Stream<Document> ofPositions = catalogue.families().values().stream()
                .flatMap(family -> family.positions().stream())
                .flatMap(position -> position.documents().stream());
        return Stream.concat(ofParts, ofPositions).map(Document::file).filter(Objects::nonNull);
    }

    /** Keeps it; tells the hash of the list. */
    String keep(Writing writing) {
        JsonOut.Members list = JsonOut.object();
        files.forEach((path, content) -> list.put(path, writing.keep(content)));
        return writing.keep(written(list));
    }

    /** The hash under which a book keeps it. */
    String hash() {
        JsonOut.Members list = JsonOut.object();
        files.forEach((path, content) -> list.put(path, Entry.sha256(content)));
        return Entry.sha256(written(list));
    }

    private static byte[] written(JsonOut.Members list) {
        return JsonOut.object().put("files", list).written().getBytes(StandardCharsets.UTF_8);
    }

    /** Hash of each file by its path. */
    static SortedMap<String, String> list(Contents contents, String hash) {
        SortedMap<String, String> list = new TreeMap<>();
        if (JsonFile.parse(hash, contents.of(hash)) instanceof Outcome.Sound<Json> sound
                && sound.value() instanceof Json.Obj root
                && root.members().get("files") instanceof Json.Obj files) {
            files.members().forEach((path, content) -> {
                if (content instanceof Json.Text text) {
                    list.put(path, text.text());
                }
            });
        }
        return list;
    }

    /** Lays a kept catalogue out in an empty folder. */
    static void lay(Contents contents, String hash, Path folder) throws IOException {
        for (Map.Entry<String, String> file : list(contents, hash).entrySet()) {
            Path path = folder.resolve(file.getKey()).normalize();
            if (!path.startsWith(folder)) {
                throw new IOException("a path that leads out of the catalogue: " + file.getKey());
            }
            Files.createDirectories(Objects.requireNonNull(path.getParent()));
            Files.write(path, contents.of(file.getValue()));
        }
    }
}

package boltlore.book;

import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A kit's lines as the content that the book keeps. */
public final class KitLines {

    private KitLines() {}

    public static byte[] write(List<KitLine> lines) {
        return JsonOut.object()
                .put("lines", JsonOut.list(lines, KitLine::json))
                .written()
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The lines again.
     *
     * @throws IllegalStateException where that is no kit: only what {@link #write} made is kept as one
     */
    public static List<KitLine> read(String hash, byte[] content) {
        Faults faults = new Faults();
        Outcome<List<KitLine>> lines = JsonFile.parse(hash, content).then(json -> {
            List<KitLine> read = ObjectReader.of(json, faults).list("lines", KitLine::read);
            return faults.orElse(read);
        });
        if (lines instanceof Outcome.Sound<List<KitLine>> sound) {
            return sound.value();
        }
        throw new IllegalStateException("No kit: " + lines.faults().get(0));
    }
}

package boltlore.order.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A sound order for the small catalogue, as it is or with one change. */
final class PlainOrder {

    static final Path FILE = Path.of("src/test/resources/small/orders/plain.json");

    private PlainOrder() {}

    static Catalogue catalogue() {
        return sound(CatalogueReader.read(Path.of("src/test/resources/small")));
    }

    /** The order with changes, each a text that stands in it and the text to stand there instead. */
    static Outcome<Order> changed(String... fromAndTo) {
        try {
            String text = Files.readString(FILE);
            for (int i = 0; i < fromAndTo.length; i += 2) {
                if (!text.contains(fromAndTo[i])) {
                    throw new IllegalArgumentException(fromAndTo[i]);
                }
                text = text.replace(fromAndTo[i], fromAndTo[i + 1]);
            }
            return parse(text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Outcome<Order> parse(String text) {
        return OrderReader.parse("plain.json", text.getBytes(StandardCharsets.UTF_8), catalogue());
    }

    static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }
}

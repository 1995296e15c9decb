package boltlore.cli;

import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.LineName;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.order.json.OrderWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Writes an order that was asked for into a file of its own, whole or not at all. */
final class OrderAsked {

    private final Dialogue dialogue;
    private final CatalogueSession session;
    private final @Nullable Path out;
    private final DraftFile draft;

    /** @param out the file that was asked for, or null */
    OrderAsked(Dialogue dialogue, CatalogueSession session, @Nullable Path out, DraftFile draft) {
        this.dialogue = dialogue;
        this.session = session;
        this.out = out;
        this.draft = draft;
    }

    Outcome<Integer> write(ChoosingSession choosing, Order asked) {
        Order order = carried(choosing, asked);
        byte[] text = OrderWriter.write(order).getBytes(StandardCharsets.UTF_8);
        Path file = out != null ? out : Path.of(order.name().toLowerCase(Locale.ROOT) + ".json");
        return OrderReader.parse("", text, session.catalogue()).then(read -> write(file, text));
    }

    /** A bracket that the order leaves out, but that carries something now, has to come along. */
    private Order carried(ChoosingSession choosing, Order asked) {
        if (!(asked.leftOut() instanceof LeftOut.These before)) {
            return asked;
        }
        LeftOut still = choosing.best().ordered(asked.choices()).leftOut();
        if (still instanceof LeftOut.These after) {
            Set<LineName> needed = new TreeSet<>(before.lines());
            needed.removeAll(after.lines());
            needed.forEach(line -> dialogue.screen()
                    .wrapped(0, "Note: '" + line + "' is not left out any more: it carries something in this kit."));
        }
        return asked.withLeftOut(still);
    }

    private Outcome<Integer> write(Path wanted, byte[] text) {
        Path file = wanted;
        while (Files.exists(file)) {
            Optional<String> other = dialogue.ask(file + " exists. Which other file?");
            if (other.isEmpty() || other.get().isEmpty()) {
                dialogue.screen().wrapped(0, draft.says());
                return Outcome.faulty(Fault.of(
                        file.toString(),
                        "a file that exists",
                        "a new file",
                        "Name another with --out, or move this one."));
            }
            file = Path.of(other.get());
        }
        return Exports.newFile(file, text).then(written -> {
            draft.drop();
            dialogue.screen().wrapped(0, "Written: " + written + ". 'boltlore kit " + written + "' makes its sheets.");
            return Outcome.sound(Exit.OK);
        });
    }
}

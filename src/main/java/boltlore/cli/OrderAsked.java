package boltlore.cli;

import boltlore.asking.AskedHead;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.LineName;
import boltlore.order.LeftOut;
import boltlore.order.Order;
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
    private final Path schemas;

    /**
     * @param out the file that was asked for, or null
     * @param schemas the folder of the catalogue's schemas
     */
    OrderAsked(Dialogue dialogue, CatalogueSession session, @Nullable Path out, DraftFile draft, Path schemas) {
        this.dialogue = dialogue;
        this.session = session;
        this.out = out;
        this.draft = draft;
        this.schemas = schemas;
    }

    Outcome<Integer> write(ChoosingSession choosing, Order asked) {
        Order order = carried(choosing, asked);
        Path file = out != null ? out : Path.of(order.name().toLowerCase(Locale.ROOT) + ".json");
        return AskedHead.checked(order, session.catalogue()).then(read -> write(file, order));
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

    private Outcome<Integer> write(Path wanted, Order order) {
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
        return Exports.newFile(file, DraftFile.text(order, file, schemas)).then(written -> {
            draft.drop();
            dialogue.screen().wrapped(0, "Written: " + written + ". 'boltlore kit " + written + "' makes its sheets.");
            return Outcome.sound(Exit.OK);
        });
    }
}

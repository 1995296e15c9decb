package boltlore.cli;

import boltlore.book.stores.ChangeWork;
import boltlore.book.stores.ChangeWork.CutPieces;
import boltlore.book.stores.ChangeWork.To;
import boltlore.book.stores.ChangeWork.Undone;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Carries a change out. */
@Command(
        name = "carry",
        description =
                "Carry an accepted change out: what was picked in vain comes back, pieces that wait for a coat in vain"
                        + " leave the queue and new ones join it, what was cut in vain goes where you say; what comes in is short from"
                        + " then on ('stock short').")
final class ChangeCarry extends PickCommand.OnLine {

    @Parameters(index = "1", paramLabel = "CHANGE", description = "The change's number within the order.")
    private int number;

    @Option(
            names = "--to-stock",
            paramLabel = "PART=N",
            description = "So many pieces that were cut go into their bin. May be given several times.")
    private Map<String, BigDecimal> toStock = new LinkedHashMap<>();

    @Option(names = "--scrap", paramLabel = "PART=N", description = "So many are scrapped.")
    private Map<String, BigDecimal> scrap = new LinkedHashMap<>();

    @Option(names = "--there", paramLabel = "PART=N", description = "So many were booked in already.")
    private Map<String, BigDecimal> there = new LinkedHashMap<>();

    @Override
    Outcome<Integer> work(Screen screen, At at) {
        return pieces().then(pieces -> new ChangeWork(at.book(), at.by(), at.catalogue())
                .carry(at.kit(), number, pieces, at.why())
                .then(written -> written(screen, written, ChangeCarry::asJson, undone -> told(screen, undone))));
    }

    private Outcome<List<CutPieces>> pieces() {
        return Outcome.all(Stream.of(each(toStock, To.STOCK), each(scrap, To.SCRAP), each(there, To.THERE))
                .flatMap(all -> all)
                .toList());
    }

    private static Stream<Outcome<CutPieces>> each(Map<String, BigDecimal> said, To to) {
        return said.entrySet().stream()
                .map(one -> part(one.getKey())
                        .then(part -> StockCommand.above(one.getValue())
                                .then(many -> Outcome.sound(new CutPieces(part, many, to)))));
    }

    private static void told(Screen screen, Undone undone) {
        undone.back().forEach(row -> screen.wrapped(0, "back: " + plain(row.quantity()) + " " + row.held()));
        undone.queued().forEach(piece -> screen.wrapped(0, "out of the coating queue: " + piece.piece()));
        undone.cut().forEach((part, many) -> screen.wrapped(0, "cut in vain: " + plain(many) + " " + part));
        if (undone.nothing()) {
            screen.wrapped(0, "Nothing is to be undone.");
        }
    }

    private static JsonOut asJson(Undone undone) {
        JsonOut.Members cut = JsonOut.object();
        undone.cut().forEach(cut::put);
        return JsonOut.object()
                .put(
                        "back",
                        JsonOut.list(
                                undone.back(),
                                row -> StockCommand.asJson(row.held()).put("quantity", row.quantity())))
                .put(
                        "outOfQueue",
                        JsonOut.texts(undone.queued().stream()
                                .map(piece -> piece.piece())
                                .toList()))
                .put("cut", cut);
    }
}

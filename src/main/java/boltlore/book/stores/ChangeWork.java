package boltlore.book.stores;

import boltlore.book.BuiltHappening.Worked;
import boltlore.book.By;
import boltlore.book.ChangeState;
import boltlore.book.Held;
import boltlore.book.OrderChange;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.ShopHappening.Coating;
import boltlore.book.StockHappening;
import boltlore.book.StockHappening.Issued;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Carrying a change out in the middle of work: what the order has got and needs no more comes back, pieces that wait for
 * their coat in vain leave the queue, what was cut for it goes to the stores or to scrap.
 */
public final class ChangeWork {

    private final Book book;
    private final By by;
    private final Catalogue catalogue;

    public ChangeWork(Book book, By by, Catalogue catalogue) {
        this.book = book;
        this.by = by;
        this.catalogue = catalogue;
    }

    /** What becomes of pieces that were cut and are in no bin yet. */
    public enum To {
        STOCK,
        SCRAP,
        /** They were booked in already. */
        THERE
    }

    /** So many pieces of a part that was cut. */
    public record CutPieces(String part, BigDecimal quantity, To to) {}

    /**
     * What is to be undone of an order after a change.
     *
     * @param back what it has got and needs no more
     * @param queued pieces that are not to be coated any more and do not hang yet
     * @param cut pieces by part that were cut, go out and were not picked
     */
    public record Undone(List<Stock.Row> back, List<Shop.Piece> queued, SortedMap<String, BigDecimal> cut) {

        public boolean nothing() {
            return back.isEmpty() && queued.isEmpty() && cut.isEmpty();
        }
    }

    /** What is to be undone of the order as it stands now. */
    public static Undone of(Reading reading, KitInWork kit) {
        return new Undone(
                surplus(reading, kit).stream()
                        .map(issued -> new Stock.Row(issued.held(), issued.quantity()))
                        .toList(),
                CoatDesk.notAsked(reading, kit),
                cut(reading, kit));
    }

    /** Of each line what the order has got above what it asks for, what came last first. */
    private static List<Issued> surplus(Reading reading, KitInWork kit) {
        Map<String, BigDecimal> over = new TreeMap<>();
        List<Issued> issued =
                new ArrayList<>(reading.stock().issuedTo(kit.order().name()));
        issued.forEach(each -> over.merge(GivenBack.key(each), each.quantity(), BigDecimal::add));
        PickLine.of(reading, kit)
                .forEach(line -> over.computeIfPresent(line.key(), (key, got) -> got.subtract(line.wanted())));
        List<Issued> surplus = new ArrayList<>();
        for (int i = issued.size() - 1; i >= 0; i--) {
            Issued each = issued.get(i);
            BigDecimal some =
                    over.getOrDefault(GivenBack.key(each), BigDecimal.ZERO).min(each.quantity());
            if (some.signum() > 0) {
                surplus.add(new Issued(each.held(), some, each.order(), each.instead(), each.concession()));
                over.merge(GivenBack.key(each), some.negate(), BigDecimal::add);
            }
        }
        return surplus;
    }

    /** Cut above what the kit needs in whatever finish, and not among what comes back. */
    private static SortedMap<String, BigDecimal> cut(Reading reading, KitInWork kit) {
        String order = kit.order().name();
        SortedMap<String, BigDecimal> over = new TreeMap<>();
        reading.changes()
                .workOn(order)
                .forEach((piece, stages) ->
                        over.merge(piece.part(), stages.getOrDefault(CUT, BigDecimal.ZERO), BigDecimal::add));
        kit.bill()
                .all()
                .forEach(item -> over.computeIfPresent(
                        item.part().number().text(), (part, cut) -> cut.subtract(item.quantity())));
        surplus(reading, kit)
                .forEach(issued ->
                        over.computeIfPresent(issued.held().part(), (part, cut) -> cut.subtract(issued.quantity())));
        over.values().removeIf(left -> left.signum() <= 0);
        return over;
    }

    private static final String CUT = "cut";

    /**
     * Undoes it, all or nothing, and puts new pieces into the coating queue where the order's pieces were in it.
     *
     * @param cut what becomes of every piece that was cut in vain
     */
    public Outcome<Written<Undone>> carry(KitInWork kit, int number, List<CutPieces> cut, String reason) {
        String name = kit.order().name();
        return book.write(
                by,
                writing -> accepted(writing, name, number).then(change -> {
                    Undone undone = of(writing, kit);
                    List<Fault> faults = decided(name, undone.cut(), cut);
                    if (!faults.isEmpty()) {
                        return Outcome.faulty(faults);
                    }
                    String why = reason.isBlank() ? "change " + number : reason;
                    surplus(writing, kit).forEach(issued -> GivenBack.of(writing, kit, issued, "", why));
                    undone.queued()
                            .forEach(piece -> writing.add(
                                    new Coating(piece.piece(), name, piece.part(), piece.finish(), Coat.WITHDRAWN, ""),
                                    why));
                    cut.forEach(pieces -> cut(writing, name, pieces, change, why));
                    if (!writing.shop().pieces(List.of(), name).isEmpty()) {
                        CoatDesk.queue(writing, kit);
                    }
                    return Outcome.sound(undone);
                }));
    }

    private static Outcome<OrderChange> accepted(Reading reading, String name, int number) {
        return reading.changes()
                .find(name, number)
                .filter(change -> change.state() == ChangeState.ACCEPTED)
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "order " + name,
                        "no accepted change " + number,
                        "one that is accepted and not carried out",
                        "'boltlore change list " + name + "' lists them.")));
    }

    /** Nobody but a person knows where cut pieces are: each must be spoken for. */
    private static List<Fault> decided(String name, SortedMap<String, BigDecimal> asked, List<CutPieces> cut) {
        SortedMap<String, BigDecimal> open = new TreeMap<>(asked);
        cut.forEach(pieces -> open.merge(pieces.part(), pieces.quantity().negate(), BigDecimal::add));
        return open.entrySet().stream()
                .filter(each -> each.getValue().signum() != 0)
                .map(each -> Fault.of(
                        "order " + name,
                        each.getValue().signum() > 0
                                ? Digits.plain(each.getValue()) + " " + each.getKey()
                                        + " that were cut and go out of the kit, and nobody says where they are"
                                : Digits.plain(each.getValue().negate()) + " " + each.getKey()
                                        + " more than were cut and go out of the kit",
                        "what becomes of each piece",
                        "Say --to-stock " + each.getKey() + "=N, --scrap " + each.getKey() + "=N, or --there "
                                + each.getKey() + "=N where they were booked in already."))
                .toList();
    }

    private void cut(Writing writing, String order, CutPieces pieces, OrderChange change, String why) {
        Part part = catalogue.parts().get(new PartNumber(pieces.part()));
        String revision = writing.orders().lines(change.from()).stream()
                .filter(line -> line.part().equals(pieces.part()))
                .map(line -> line.revision())
                .findFirst()
                .orElse("-");
        if (pieces.to() == To.STOCK) {
            writing.add(
                    new StockHappening.Received(
                            Held.of(pieces.part(), part == null ? "" : part.bin()), pieces.quantity(), "", revision),
                    why);
        }
        String finish = writing.orders().lines(change.from()).stream()
                .filter(line -> line.part().equals(pieces.part()))
                .map(line -> line.finish())
                .findFirst()
                .orElse("");
        writing.add(
                new Worked(
                        order,
                        pieces.part(),
                        revision,
                        finish,
                        CUT,
                        pieces.quantity().negate()),
                pieces.to() == To.SCRAP ? why + ": scrapped" : why);
    }
}

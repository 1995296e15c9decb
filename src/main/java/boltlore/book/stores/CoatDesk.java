package boltlore.book.stores;

import boltlore.book.BuiltHappening.Worked;
import boltlore.book.By;
import boltlore.book.Held;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.ShopHappening.Coating;
import boltlore.book.StockHappening;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The queue before and in the coating shop, piece by piece over all orders. */
public final class CoatDesk {

    private final Book book;
    private final By by;
    private final Catalogue catalogue;

    public CoatDesk(Book book, By by, Catalogue catalogue) {
        this.book = book;
        this.by = by;
        this.catalogue = catalogue;
    }

    /** Puts all pieces of these kits that are to be coated into the queue; those that are in it stay where they are. */
    public Outcome<Written<List<Piece>>> queue(List<KitInWork> kits) {
        return book.write(
                by,
                writing -> Outcome.sound(kits.stream()
                        .flatMap(kit -> queue(writing, kit).stream())
                        .toList()));
    }

    /** For each piece in its finish that the kit asks for one in the queue; a piece that was given up is made again. */
    static List<Piece> queue(Writing writing, KitInWork kit) {
        String order = kit.order().name();
        List<Piece> added = new ArrayList<>();
        pieces(kit).forEach((key, count) -> {
            List<Piece> ofPart = ofPart(writing, order, key.part());
            long there = ofPart.stream()
                    .filter(piece -> piece.finish().equals(key.finish()) && isAlive(piece))
                    .count();
            int last = ofPart.stream().mapToInt(CoatDesk::number).max().orElse(0);
            for (int number = 1; there + number <= count; number++) {
                String piece = order + "/" + key.part() + "/" + (last + number);
                writing.add(new Coating(piece, order, key.part(), key.finish(), Coat.WAITING, ""), "");
                added.add(writing.shop().piece(piece).orElseThrow());
            }
        });
        return added;
    }

    static List<Piece> ofPart(Reading reading, String order, String part) {
        return reading.shop().pieces(List.of(), order).stream()
                .filter(piece -> piece.part().equals(part))
                .toList();
    }

    static boolean isAlive(Piece piece) {
        return piece.state() != Coat.SCRAPPED && piece.state() != Coat.WITHDRAWN;
    }

    /** Which one of its part it is: 3 of 'BL-1001/PX-12/3'. */
    static int number(Piece piece) {
        return Integer.parseInt(piece.piece().substring(piece.piece().lastIndexOf('/') + 1));
    }

    /** Pieces of an order that may leave the queue, because its kit does not ask for them, or for fewer. */
    static List<Piece> notAsked(Reading reading, KitInWork kit) {
        SortedMap<PartInFinish, Integer> asked = pieces(kit);
        Map<PartInFinish, List<Piece>> alive = reading
                .shop()
                .pieces(List.of(), kit.order().name())
                .stream()
                .filter(CoatDesk::isAlive)
                .collect(Collectors.groupingBy(
                        piece -> new PartInFinish(piece.part(), piece.finish()), TreeMap::new, Collectors.toList()));
        List<Piece> out = new ArrayList<>();
        alive.forEach((key, pieces) -> {
            int over = pieces.size() - asked.getOrDefault(key, 0);
            pieces.stream()
                    .filter(piece -> piece.state().next().contains(Coat.WITHDRAWN))
                    .limit(Math.max(0, over))
                    .forEach(out::add);
        });
        return out;
    }

    private record PartInFinish(String part, String finish) implements Comparable<PartInFinish> {
        @Override
        public int compareTo(PartInFinish other) {
            return (part + " " + finish).compareTo(other.part + " " + other.finish);
        }
    }

    private static SortedMap<PartInFinish, Integer> pieces(KitInWork kit) {
        SortedMap<PartInFinish, Integer> counts = new TreeMap<>();
        kit.bill()
                .coated()
                .filter(item -> !item.finish().isEmpty())
                .forEach(item -> counts.merge(
                        new PartInFinish(item.part().number().text(), item.finish()),
                        item.quantity().setScale(0, RoundingMode.UP).intValueExact(),
                        Integer::sum));
        return counts;
    }

    /**
     * Says that pieces stand elsewhere now; all of them or none.
     *
     * @param named pieces, 'BL-1001/PX-12/3'; all of a part of an order, 'BL-1001/PX-12'; all of an order; what of them cannot
     *     go there is left where it is unless it is named by itself
     * @param load that they hang in, or the coater that they go to; asked for there
     */
    public Outcome<Written<List<Piece>>> move(List<String> named, Coat to, String load, String reason) {
        return move(named, "", to, load, reason);
    }

    /**
     * The same of pieces in one finish. What hangs in a load has one powder, what goes out together one finish, and either is
     * a piece that the stores have bare.
     *
     * @param finish that the pieces have, whatever else is named; empty for any
     */
    public Outcome<Written<List<Piece>>> move(List<String> named, String finish, Coat to, String load, String reason) {
        List<Fault> unsaid = unsaid(to, load, reason);
        if (!unsaid.isEmpty()) {
            return Outcome.faulty(unsaid);
        }
        return book.write(
                by,
                writing -> Outcome.all(named.stream()
                                .map(name -> matching(writing, name, finish, to))
                                .toList())
                        .then(found -> together(
                                writing,
                                found.stream().flatMap(List::stream).distinct().toList(),
                                to,
                                load))
                        .then(pieces -> {
                            BarePieces bare = new BarePieces(writing, catalogue);
                            return Outcome.all(pieces.stream()
                                    .map(piece -> move(writing, bare, piece, to, load, reason))
                                    .toList());
                        }));
    }

    private static List<Fault> unsaid(Coat to, String load, String reason) {
        if ((to == Coat.HUNG || to == Coat.OUT) && load.isBlank()) {
            return List.of(Fault.of(
                    "",
                    to == Coat.HUNG ? "no load" : "no coater",
                    to == Coat.HUNG ? "the number of the load" : "where they go",
                    "Add --load."));
        }
        if ((to == Coat.REJECTED || to == Coat.SCRAPPED || to == Coat.WITHDRAWN) && reason.isBlank()) {
            return List.of(Fault.of(
                    "",
                    "no reason",
                    to == Coat.WITHDRAWN ? "why they are not coated" : "what is wrong with them",
                    "Add --reason."));
        }
        return List.of();
    }

    private Outcome<List<Piece>> together(Writing writing, List<Piece> pieces, Coat to, String load) {
        List<Fault> faults = CoatLoads.faults(writing, catalogue, pieces, to, load);
        return faults.isEmpty() ? Outcome.sound(pieces) : Outcome.faulty(faults);
    }

    private static Outcome<List<Piece>> matching(Writing writing, String name, String finish, Coat to) {
        Piece one = writing.shop().piece(name).orElse(null);
        if (one != null) {
            return one.state().next().contains(to)
                            && (finish.isEmpty() || one.finish().equals(finish))
                    ? Outcome.sound(List.of(one))
                    : Outcome.faulty(cannot(one, to));
        }
        List<Piece> below = writing.shop().pieces(List.of(), name.split("/", 2)[0]).stream()
                .filter(piece -> piece.piece().startsWith(name + "/"))
                .filter(piece -> finish.isEmpty() || piece.finish().equals(finish))
                .toList();
        List<Piece> fitting = below.stream()
                .filter(piece -> piece.state().next().contains(to))
                .toList();
        if (!fitting.isEmpty()) {
            return Outcome.sound(fitting);
        }
        return Outcome.faulty(
                below.isEmpty()
                        ? Fault.of(
                                "",
                                "'" + name + "'" + (finish.isEmpty() ? "" : " in " + finish),
                                "a piece, part or order of the queue",
                                "'boltlore coating list' shows them; 'boltlore coating queue ORDER' takes them up.")
                        : cannot(below.get(0), to));
    }

    private static Fault cannot(Piece piece, Coat to) {
        String may = piece.state().next().stream().map(Coat::written).collect(Collectors.joining(", "));
        return Fault.of(
                "piece " + piece.piece(),
                "'" + piece.state().written() + "', from where it does not go to '" + to.written() + "'",
                may.isEmpty() ? "nothing further" : "one of " + may,
                "");
    }

    Outcome<Piece> move(Writing writing, BarePieces bare, Piece piece, Coat to, String load, String reason) {
        return stores(writing, bare, piece, to, reason).then(done -> {
            writing.add(new Coating(piece.piece(), piece.order(), piece.part(), piece.finish(), to, load), reason);
            return Outcome.sound(writing.shop().piece(piece.piece()).orElseThrow());
        });
    }

    /** An accepted piece lies in the stores in its finish; one that is rejected after that does no more. */
    private Outcome<Boolean> stores(Writing writing, BarePieces bare, Piece piece, Coat to, String reason) {
        if (to == Coat.HUNG || to == Coat.OUT) {
            return bare.toShop(piece, reason);
        }
        if (to == Coat.ACCEPTED) {
            return bare.out(piece, reason).then(held -> {
                writing.add(new StockHappening.Coated(held, BigDecimal.ONE, piece.finish()), "");
                worked(writing, piece, BigDecimal.ONE);
                return Outcome.sound(true);
            });
        }
        if (to == Coat.SCRAPPED) {
            Held scrapped = bare.lying(piece.part(), "");
            if (scrapped != null) {
                writing.add(new StockHappening.Scrapped(scrapped, BigDecimal.ONE), reason);
            }
            return Outcome.sound(true);
        }
        if (piece.state() != Coat.ACCEPTED) {
            return Outcome.sound(true);
        }
        Held coated = bare.lying(piece.part(), piece.finish());
        if (coated == null) {
            return Outcome.faulty(Fault.of(
                    "piece " + piece.piece(),
                    "an accepted piece that is not in the stores any more",
                    "one that lies there",
                    "'boltlore pick back " + piece.order() + " " + piece.part() + " --finish " + piece.finish()
                            + "' brings it back."));
        }
        writing.add(new StockHappening.Coated(coated, BigDecimal.ONE, ""), reason);
        worked(writing, piece, BigDecimal.ONE.negate());
        return Outcome.sound(true);
    }

    private void worked(Writing writing, Piece piece, BigDecimal more) {
        Part part = catalogue.parts().get(new PartNumber(piece.part()));
        writing.add(
                new Worked(
                        piece.order(),
                        piece.part(),
                        part == null ? "-" : part.revision(),
                        piece.finish(),
                        "coated",
                        more),
                "");
    }

    /** How many pieces stand where, by finish: what each room looks at. */
    public static SortedMap<String, Map<Coat, Integer>> counts(List<Piece> pieces) {
        SortedMap<String, Map<Coat, Integer>> counts = new TreeMap<>();
        pieces.forEach(piece ->
                counts.computeIfAbsent(piece.finish(), any -> new TreeMap<>()).merge(piece.state(), 1, Integer::sum));
        return counts;
    }
}

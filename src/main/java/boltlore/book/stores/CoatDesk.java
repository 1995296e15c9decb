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
import boltlore.catalogue.Tracked;
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

    private static List<Piece> ofPart(Reading reading, String order, String part) {
        return reading.shop().pieces(List.of(), order).stream()
                .filter(piece -> piece.part().equals(part))
                .toList();
    }

    private static boolean isAlive(Piece piece) {
        return piece.state() != Coat.SCRAPPED && piece.state() != Coat.WITHDRAWN;
    }

    /** Which one of its part it is: 3 of 'BL-1001/PX-12/3'. */
    private static int number(Piece piece) {
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
        if ((to == Coat.HUNG || to == Coat.OUT) && load.isBlank()) {
            return Outcome.faulty(Fault.of(
                    "",
                    to == Coat.HUNG ? "no load" : "no coater",
                    to == Coat.HUNG ? "the number of the load" : "where they go",
                    "Add --load."));
        }
        if ((to == Coat.REJECTED || to == Coat.SCRAPPED || to == Coat.WITHDRAWN) && reason.isBlank()) {
            return Outcome.faulty(Fault.of(
                    "",
                    "no reason",
                    to == Coat.WITHDRAWN ? "why they are not coated" : "what is wrong with them",
                    "Add --reason."));
        }
        return book.write(
                by,
                writing -> Outcome.all(named.stream()
                                .map(name -> matching(writing, name, to))
                                .toList())
                        .then(found -> {
                            List<Piece> pieces = found.stream()
                                    .flatMap(List::stream)
                                    .distinct()
                                    .toList();
                            return Outcome.all(pieces.stream()
                                    .map(piece -> move(writing, piece, to, load, reason))
                                    .toList());
                        }));
    }

    private static Outcome<List<Piece>> matching(Writing writing, String name, Coat to) {
        Piece one = writing.shop().piece(name).orElse(null);
        if (one != null) {
            return one.state().next().contains(to)
                    ? Outcome.sound(List.of(one))
                    : Outcome.faulty(CoatRules.cannot(one, to));
        }
        List<Piece> below = writing.shop().pieces(List.of(), name.split("/", 2)[0]).stream()
                .filter(piece -> piece.piece().startsWith(name + "/"))
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
                                "'" + name + "'",
                                "a piece, part or order of the queue",
                                "'boltlore coating list' shows them; 'boltlore coating queue ORDER' takes them up.")
                        : CoatRules.cannot(below.get(0), to));
    }

    private Outcome<Piece> move(Writing writing, Piece piece, Coat to, String load, String reason) {
        return stores(writing, piece, to, reason).then(done -> {
            writing.add(new Coating(piece.piece(), piece.order(), piece.part(), piece.finish(), to, load), reason);
            return Outcome.sound(writing.shop().piece(piece.piece()).orElseThrow());
        });
    }

    /** An accepted piece lies in the stores in its finish; one that is rejected after that does no more. */
    private Outcome<Boolean> stores(Writing writing, Piece piece, Coat to, String reason) {
        if (to == Coat.ACCEPTED) {
            return accept(writing, piece).then(accepted -> {
                worked(writing, piece, BigDecimal.ONE);
                return Outcome.sound(true);
            });
        }
        if (to == Coat.SCRAPPED) {
            Held bare = CoatRules.lying(writing, piece.part(), "");
            if (bare != null) {
                writing.add(new StockHappening.Scrapped(bare, BigDecimal.ONE), reason);
            }
            return Outcome.sound(true);
        }
        if (piece.state() != Coat.ACCEPTED) {
            return Outcome.sound(true);
        }
        Held coated = CoatRules.lying(writing, piece.part(), piece.finish());
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

    /**
     * The bare piece becomes the coated one. One that nobody booked in bare comes in as it is, unless it has a number of its
     * own or a lot, which must be known.
     */
    private Outcome<Boolean> accept(Writing writing, Piece piece) {
        Held bare = CoatRules.lying(writing, piece.part(), "");
        Part part = catalogue.parts().get(new PartNumber(piece.part()));
        if (bare == null && part != null && part.tracked() != null) {
            return Outcome.faulty(Fault.of(
                    "piece " + piece.piece(),
                    "no bare " + piece.part() + " in the stores, of which the "
                            + (part.tracked() == Tracked.LOT ? "lot" : "serial number") + " is written down",
                    "the piece as it was made",
                    "'boltlore stock receive " + piece.part() + " 1' with its number takes it in."));
        }
        if (bare != null) {
            writing.add(new StockHappening.Coated(bare, BigDecimal.ONE, piece.finish()), "");
        } else {
            writing.add(
                    new StockHappening.Received(
                            new Held(piece.part(), piece.finish(), "", "", part == null ? "" : part.bin()),
                            BigDecimal.ONE,
                            "",
                            part == null ? "" : part.revision()),
                    "");
        }
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

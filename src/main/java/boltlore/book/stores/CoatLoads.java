package boltlore.book.stores;

import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.Piece;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import boltlore.faults.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What may hang in one oven load, and what may go out to a coater together. */
final class CoatLoads {

    private static final int SHOWN = 4;

    private CoatLoads() {}

    /** Why these pieces cannot go there together; nothing where they can. */
    static List<Fault> faults(Reading reading, Catalogue catalogue, List<Piece> pieces, Coat to, String load) {
        if (to == Coat.OUT) {
            return apart(
                    "send-out to '" + load + "'",
                    pieces,
                    Piece::finish,
                    " finishes: ",
                    "pieces of one finish, for the coater gets a list for each",
                    "Send each finish out by itself: " + each(pieces) + ".");
        }
        if (to != Coat.HUNG) {
            return List.of();
        }
        List<Fault> faults = new ArrayList<>(outside(catalogue, pieces));
        if (faults.isEmpty()) {
            List<Piece> all = Stream.concat(
                            pieces.stream(),
                            reading.shop().pieces(List.of(Coat.HUNG), "").stream()
                                    .filter(piece -> piece.load().equals(load)))
                    .toList();
            faults.addAll(apart(
                    "load '" + load + "'",
                    all,
                    piece -> powder(catalogue, piece),
                    " powders: ",
                    "pieces of one powder in a load; those of each powder may hang together",
                    "Hang each powder in a load of its own: " + each(pieces) + "."));
        }
        return faults;
    }

    private static List<Fault> apart(
            String place,
            List<Piece> pieces,
            Function<Piece, String> by,
            String kinds,
            String expected,
            String advice) {
        Map<String, List<Piece>> apart =
                pieces.stream().collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.toList()));
        return apart.size() < 2
                ? List.of()
                : List.of(Fault.of(
                        place,
                        apart.size()
                                + kinds
                                + apart.entrySet().stream()
                                        .map(each -> each.getKey() + " (" + named(each.getValue()) + ")")
                                        .collect(Collectors.joining("; ")),
                        expected,
                        advice));
    }

    /** What no oven of our own puts on does not hang in one. */
    private static List<Fault> outside(Catalogue catalogue, List<Piece> pieces) {
        Map<String, List<Piece>> outside = pieces.stream()
                .filter(piece -> !coater(catalogue, piece).isEmpty())
                .collect(Collectors.groupingBy(Piece::finish, LinkedHashMap::new, Collectors.toList()));
        return outside.values().stream()
                .map(all -> Fault.of(
                        "finish " + all.get(0).finish(),
                        "oven load for " + named(all),
                        "a send-out to " + coater(catalogue, all.get(0)) + ", who puts that finish on",
                        "'boltlore coating out' says that they went." + others(catalogue, pieces)))
                .toList();
    }

    /** Of a whole order what is put on here hangs by its finish. */
    private static String others(Catalogue catalogue, List<Piece> pieces) {
        List<Piece> here = pieces.stream()
                .filter(piece -> coater(catalogue, piece).isEmpty())
                .toList();
        return here.isEmpty() ? "" : " The others hang by their finish: " + each(here) + ".";
    }

    /** '--finish black, --finish grey'. */
    private static String each(List<Piece> pieces) {
        return pieces.stream()
                .map(Piece::finish)
                .distinct()
                .map(finish -> "--finish " + finish)
                .collect(Collectors.joining(", "));
    }

    private static String coater(Catalogue catalogue, Piece piece) {
        Finish finish = catalogue.finishes().get(piece.finish());
        if (finish == null) {
            return "";
        }
        if (finish.where() instanceof CoatedWhere.OutsideByArea byArea) {
            return byArea.coater();
        }
        return finish.where() instanceof CoatedWhere.OutsideByPiece byPiece ? byPiece.coater() : "";
    }

    /** 'PB-EPR-1, then PB-WHT-I'; the finish itself where the catalogue does not know its powders any more. */
    private static String powder(Catalogue catalogue, Piece piece) {
        Finish finish = catalogue.finishes().get(piece.finish());
        return finish == null || finish.coats().isEmpty()
                ? piece.finish()
                : finish.coats().stream().map(PowderCoat::powder).collect(Collectors.joining(", then "));
    }

    private static String named(List<Piece> pieces) {
        String some = pieces.stream().limit(SHOWN).map(Piece::piece).collect(Collectors.joining(", "));
        return pieces.size() > SHOWN ? some + " and " + (pieces.size() - SHOWN) + " more" : some;
    }
}

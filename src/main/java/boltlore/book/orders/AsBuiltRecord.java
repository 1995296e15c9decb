package boltlore.book.orders;

import boltlore.book.BuiltNote;
import boltlore.book.BuiltPart;
import boltlore.book.BuiltReading;
import boltlore.book.KitLine;
import boltlore.book.OrderStanding;
import boltlore.book.db.Reading;
import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * An order as it was built, and in what that differs from what was designed (a configuration audit in the sense of
 * ISO 10007:2017, 5.6).
 *
 * @param chassis of the vehicle, or empty
 * @param missing those of the differences that are of a part which the stores hand out with its number and that nobody has
 *     written down; what is inside assemblies made here is not among them
 * @param differences in sentences; none where all that must be written down was, and nothing else went in
 */
public record AsBuiltRecord(
        OrderStanding order,
        String chassis,
        List<BuiltPart> parts,
        List<BuiltNote> notes,
        List<BuiltReading> readings,
        List<String> missing,
        List<String> differences) {

    public static AsBuiltRecord of(Reading reading, OrderStanding order) {
        List<BuiltPart> parts = reading.asBuilt().parts(order.name());
        List<KitLine> designed =
                order.kit().isEmpty() ? List.of() : reading.orders().lines(order.kit());
        return new AsBuiltRecord(
                order,
                reading.asBuilt().chassis(order.name()).orElse(""),
                parts,
                reading.asBuilt().notes(order.name()),
                reading.asBuilt().readings(order.name()),
                missing(designed, parts),
                differences(designed, reading.needs().asked(order.name()), parts));
    }

    /** Part and revision. */
    private record Revised(String part, String revision) implements Comparable<Revised> {
        @Override
        public int compareTo(Revised other) {
            int byPart = part.compareTo(other.part);
            return byPart == 0 ? revision.compareTo(other.revision) : byPart;
        }

        @Override
        public String toString() {
            return part + " rev. " + revision;
        }
    }

    /** @param asked of the stores by part: spares go with the kit, and are no difference from it */
    static List<String> differences(List<KitLine> designed, Map<String, BigDecimal> asked, List<BuiltPart> parts) {
        Map<Revised, BigDecimal> wanted = new TreeMap<>();
        Map<Revised, BigDecimal> known = new TreeMap<>();
        Map<Revised, BigDecimal> fitted = new TreeMap<>();
        for (KitLine line : designed) {
            Revised piece = new Revised(line.part(), line.revision());
            known.merge(piece, line.quantity(), BigDecimal::add);
            if (!line.tracked().isEmpty()) {
                wanted.merge(piece, line.quantity(), BigDecimal::add);
            }
        }
        parts.stream()
                .filter(part -> part.out() == 0)
                .forEach(part ->
                        fitted.merge(new Revised(part.part(), part.revision()), part.quantity(), BigDecimal::add));
        TreeSet<Revised> all = new TreeSet<>(wanted.keySet());
        all.addAll(fitted.keySet());
        List<String> differences = new ArrayList<>();
        for (Revised piece : all) {
            BigDecimal in = fitted.getOrDefault(piece, BigDecimal.ZERO);
            if (!known.containsKey(piece)) {
                differences.add(piece + ": " + in.toPlainString() + " fitted, not in the kit as designed");
            } else if (in.compareTo(known.get(piece).max(asked.getOrDefault(piece.part(), BigDecimal.ZERO))) > 0) {
                differences.add(piece + ": " + in.toPlainString() + " fitted, "
                        + known.get(piece).toPlainString() + " designed");
            } else if (wanted.containsKey(piece) && in.compareTo(wanted.get(piece)) < 0) {
                differences.add(piece + ": " + in.toPlainString() + " of "
                        + wanted.get(piece).toPlainString() + WRITTEN_DOWN);
            }
        }
        return differences;
    }

    private static final String WRITTEN_DOWN = " written down with serial number or lot";

    private static List<String> missing(List<KitLine> designed, List<BuiltPart> parts) {
        List<KitLine> handedOut = designed.stream().filter(KitLine::picked).toList();
        return differences(handedOut, Map.of(), parts).stream()
                .filter(each -> each.endsWith(WRITTEN_DOWN))
                .toList();
    }

    public JsonOut.Members json() {
        return OrderJson.standing(order)
                .putIfAny("chassis", chassis)
                .put("parts", JsonOut.list(parts, OrderJson::built))
                .put("notes", JsonOut.list(notes, OrderJson::note))
                .put("readings", JsonOut.list(readings, OrderJson::reading))
                .put("differences", JsonOut.texts(differences));
    }
}

package boltlore.book.orders;

import boltlore.book.BuiltHappening.Noted;
import boltlore.book.BuiltNote;
import boltlore.book.BuiltReading;
import boltlore.book.ChangeState;
import boltlore.book.Frozen;
import boltlore.book.OrderChange;
import boltlore.book.OrderStanding;
import boltlore.book.ShopHappening.Coat;
import boltlore.book.db.Reading;
import boltlore.book.db.Shop.KeptRecord;
import boltlore.book.db.Shop.Piece;
import boltlore.book.orders.HoldPoint.Matter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What the records of a kit say against its leaving: of its coat, what was read of it, what is in it, how it was changed. */
final class RecordHolds {

    private final Reading reading;
    private final OrderStanding order;
    private final List<HoldPoint> points = new ArrayList<>();

    private RecordHolds(Reading reading, OrderStanding order) {
        this.reading = reading;
        this.order = order;
    }

    static List<HoldPoint> of(Reading reading, OrderStanding order) {
        RecordHolds holds = new RecordHolds(reading, order);
        holds.coated();
        holds.readings();
        holds.writtenDown();
        holds.changes();
        holds.findings();
        return holds.points;
    }

    private void coated() {
        List<Piece> pieces = reading.shop().pieces(List.of(), order.name());
        List<String> there = pieces.stream()
                .filter(piece -> !piece.state().done())
                .map(piece -> piece.piece() + " (" + piece.state().written() + ")")
                .toList();
        if (!there.isEmpty()) {
            points.add(HoldPoint.released(
                            Matter.COATING,
                            there.size() + " pieces in the coating shop",
                            "none of this order",
                            "'boltlore coating list --order " + order.name() + "' shows them.")
                    .ofAll(there));
        }
        KeptRecord film = HoldPoints.last(reading, order, "film");
        boolean coated = pieces.stream().anyMatch(piece -> piece.state() == Coat.ACCEPTED);
        if (film == null && coated) {
            points.add(HoldPoint.released(
                    Matter.FILM,
                    "coated pieces, and no record of their film",
                    "one that is passed",
                    "'boltlore record film " + order.name() + " --record FILE' judges and keeps it."));
        } else if (film != null && !film.passed()) {
            points.add(HoldPoint.released(
                    Matter.FILM,
                    "a film record that is not passed (entry " + film.entry() + ")",
                    "a later one that is",
                    "Coat again what it names, and read again."));
        }
    }

    /** Of each thing the last reading counts; a concession of the same thing answers for one that is not within its limits. */
    private void readings() {
        Set<String> conceded = reading.asBuilt().notes(order.name()).stream()
                .filter(note -> note.what().equals(Noted.CONCESSION))
                .map(BuiltNote::of)
                .collect(Collectors.toSet());
        Map<String, BuiltReading> last = new LinkedHashMap<>();
        reading.asBuilt()
                .readings(order.name())
                .forEach(each -> last.put(each.measured().of(), each));
        last.values().stream()
                .filter(each -> !each.measured().within()
                        && !conceded.contains(each.measured().of()))
                .forEach(each -> points.add(HoldPoint.firm(
                        Matter.READING,
                        "a reading outside its limits (entry " + each.entry() + "): " + each,
                        "a later one within them, or a concession",
                        "Mend it and read again, or let the engineer write the concession: 'boltlore built note "
                                + order.name() + " concession'.")));
    }

    /** What cannot be found again in a recall must be written down before it leaves. */
    private void writtenDown() {
        AsBuiltRecord record = AsBuiltRecord.of(reading, order);
        if (!record.missing().isEmpty()) {
            points.add(HoldPoint.firm(
                            Matter.NUMBERS,
                            record.missing().size() + " parts without the serial number or lot that is asked for",
                            "all of them written down, so that a recall finds them",
                            "'boltlore built fit " + order.name() + " --part PART --serial NUMBER' writes one down.")
                    .ofAll(record.missing()));
        }
        Set<String> told = Set.copyOf(record.missing());
        List<String> others = record.differences().stream()
                .filter(difference -> !told.contains(difference))
                .toList();
        if (!others.isEmpty()) {
            points.add(HoldPoint.released(
                            Matter.NUMBERS,
                            others.size() + " differences from the kit as designed",
                            "the kit as designed",
                            "'boltlore built show " + order.name() + "' names them.")
                    .ofAll(others));
        }
    }

    private void changes() {
        for (OrderChange change : reading.changes().of(order.name())) {
            String named =
                    "change " + change.number() + ", which is " + change.state().written();
            if (change.state() == ChangeState.PROPOSED) {
                points.add(HoldPoint.firm(
                        Matter.CHANGE,
                        named,
                        "a decision",
                        "'boltlore change decide " + order.name() + " " + change.number() + "' accepts or drops it."));
            } else if (change.state() == ChangeState.ACCEPTED) {
                points.add(HoldPoint.firm(
                        Matter.CHANGE,
                        named + " and not carried out",
                        "one that is carried out",
                        "'boltlore change carry " + order.name() + " " + change.number()
                                + "' does, 'boltlore change decide … done' says so."));
            }
        }
    }

    private void findings() {
        Frozen stands = HoldPoints.standing(reading, order);
        List<KeptFinding> found = KeptFinding.in(reading, stands.findings());
        points.addAll(HoldPoints.stops(reading, stands));
        List<String> checks = found.stream()
                .filter(KeptFinding::isToCheck)
                .map(check -> check.by() + ": " + check.kind() + " (" + check.subject() + ")")
                .toList();
        if (!checks.isEmpty()) {
            points.add(HoldPoint.released(
                            Matter.CHECKS,
                            checks.size() + " things that a person checks",
                            "all of them checked",
                            "'boltlore order show " + order.name() + " --findings' tells each.")
                    .ofAll(checks));
        }
    }
}

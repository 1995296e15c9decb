package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.LateMoves;
import boltlore.trades.coating.sheets.CoatJob;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Orders to coat together, resolved, and perhaps one that comes late. */
record CoatedKits(KitsTogether planned, @Nullable OrderKit late) {

    /** Orders that something stops, which stay out of the plan. */
    List<OrderKit> stopped() {
        return Stream.concat(planned.stopped().stream(), Stream.ofNullable(late).filter(kit -> !kit.issuesSheets()))
                .toList();
    }

    /** The plan, or nothing where no order can be coated, or not the late one. */
    Optional<CoatJob> job(@Nullable LocalDate start) {
        List<Bill> bills = planned.bills();
        Catalogue catalogue = planned.catalogue();
        if (bills.isEmpty() || (late != null && !late.issuesSheets())) {
            return Optional.empty();
        }
        return Optional.of(Stream.ofNullable(late)
                .flatMap(KitsTogether::bill)
                .findFirst()
                .map(bill -> with(bill, bills, start))
                .orElseGet(() -> new CoatJob(CoatPlanner.of(bills, catalogue), catalogue.workshop(), start, null)));
    }

    private CoatJob with(Bill lateBill, List<Bill> bills, @Nullable LocalDate start) {
        LateMoves moves = LateMoves.of(bills, lateBill, planned.catalogue());
        return new CoatJob(moves.after(), planned.catalogue().workshop(), start, moves);
    }
}

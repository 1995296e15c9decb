package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Family;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Part;
import boltlore.choices.FinishChosen;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Coated parts that an order asks for outside the universal kit. What the customer supplies is fitted as it comes, and of a
 * one-off that is only described nobody knows what to coat.
 */
final class ExtraPieces {

    /** A quantity of one part; the finish is empty where the family does not decide its role. */
    record Pieces(Part part, CoatingSpec coat, String finish, BigDecimal quantity) {}

    private final Catalogue catalogue;
    private final Bill bill;

    private ExtraPieces(Catalogue catalogue, Bill bill) {
        this.catalogue = catalogue;
        this.bill = bill;
    }

    /** In the order's own order, each assembly's coated parts at the level that they are coated at. */
    static List<Pieces> find(Bill bill, Catalogue catalogue) {
        ExtraPieces pieces = new ExtraPieces(catalogue, bill);
        return bill.order().extra().stream()
                .flatMap(extra -> pieces.find(extra, extra.quantity()))
                .toList();
    }

    /** What is coated of one of the extra. */
    static Stream<Pieces> ofOne(Extra extra, Bill bill, Catalogue catalogue) {
        return new ExtraPieces(catalogue, bill).find(extra, BigDecimal.ONE);
    }

    private Stream<Pieces> find(Extra extra, BigDecimal quantity) {
        PartNumber number = extra.part();
        return number == null || extra.suppliedByCustomer()
                ? Stream.of()
                : find(catalogue.part(number), quantity, extra.finish());
    }

    private Stream<Pieces> find(Part part, BigDecimal quantity, String asked) {
        CoatingSpec coat = part.coat();
        Stream<Pieces> itself = coat == null
                ? Stream.of()
                : Stream.of(new Pieces(part, coat, asked.isEmpty() ? finish(coat) : asked, quantity));
        Stream<Pieces> inside = part.contains().stream()
                .flatMap(child -> find(catalogue.part(child.part()), quantity.multiply(child.quantity()), asked));
        return Stream.concat(itself, inside);
    }

    private String finish(CoatingSpec coat) {
        String finish = coat.finish() != null ? coat.finish() : byRole(coat.role());
        return finish == null ? "" : finish;
    }

    private @Nullable String byRole(@Nullable String role) {
        Family family = bill.resolved().choices().family();
        FinishRule rule = role == null ? null : family.finishes().get(role);
        return rule == null ? null : FinishChosen.by(rule, bill.resolved().choices());
    }
}

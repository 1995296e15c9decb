package boltlore.checking;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.catalogue.Placeholder;
import boltlore.catalogue.Source;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A bought part says from whom, by which of its numbers and how long it takes, and its least order is a number of whole packs. */
final class BuyingGiven {

    private BuyingGiven() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        Set<PartNumber> boughtWhole = BoughtWhole.inside(catalogue);
        return catalogue.parts().values().stream()
                .filter(part -> part.source() == Source.BUY && !boughtWhole.contains(part.number()))
                .flatMap(part ->
                        Stream.of(missing(part), packs(part), breaks(part)).flatMap(each -> each));
    }

    /** A part that was begun is filled in. */
    static Stream<Remark> begun(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .filter(part -> !Placeholder.in(part).isEmpty())
                .map(part -> new Remark(
                        Said.part(part),
                        Check.PLACEHOLDER,
                        String.join(", ", Placeholder.in(part)) + ", as 'new' writes a part",
                        "what is true of the part",
                        "Put it in their place"));
    }

    private static Stream<Remark> missing(Part part) {
        List<String> missing = new ArrayList<>();
        Buying buying = part.buying();
        if (buying == null || buying.supplier().isBlank()) {
            missing.add("supplier");
        }
        if (buying == null || buying.orderCode().isBlank()) {
            missing.add("supplier part number");
        }
        if (part.leadDays() <= 0) {
            missing.add("lead days");
        }
        return missing.isEmpty()
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.BUYING,
                        "no " + String.join(", no ", missing),
                        "supplier, supplier part number (orderCode) and lead days of a bought part",
                        "Ask purchasing"));
    }

    /** Who needs fewer would then order more than is needed, and pay less. */
    private static Stream<Remark> breaks(Part part) {
        Stream<Offer> offers = part.buying() == null ? Stream.of() : part.buying().offers().stream();
        return offers.flatMap(offer -> IntStream.range(1, offer.breaks().size())
                .filter(i -> offer.breaks()
                                .get(i)
                                .cost()
                                .compareTo(offer.breaks().get(i - 1).cost())
                        > 0)
                .mapToObj(i -> new Remark(
                        Said.part(part),
                        Check.PRICE_BREAKS,
                        offer.supplier() + ": " + offer.breaks().get(i).cost().toPlainString() + " from "
                                + Digits.plain(offer.breaks().get(i).from()) + ", dearer than below",
                        "prices that do not rise with the quantity",
                        "Check the offer")));
    }

    private static Stream<Remark> packs(Part part) {
        Buying buying = part.buying();
        if (buying == null || buying.packOf() == null || buying.minimumOrder() == null) {
            return Stream.empty();
        }
        BigDecimal pack = buying.packOf();
        BigDecimal minimum = buying.minimumOrder();
        boolean whole = pack.signum() > 0 && minimum.remainder(pack).signum() == 0 && minimum.signum() > 0;
        return whole
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.PACKS,
                        "a minimum order of " + Digits.plain(minimum) + " in packs of " + Digits.plain(pack),
                        "a minimum of whole packs",
                        "Ask the supplier which of the two holds"));
    }
}

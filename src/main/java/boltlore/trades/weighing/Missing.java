package boltlore.trades.weighing;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.catalogue.MassLimit;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a weight statement lacks, in sentences that say what follows from it. */
record Missing(
        Catalogue catalogue,
        Family family,
        Bill bill,
        List<Added> added,
        @Nullable MassLimit limit) {

    private static final int NAMED = 4;

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Donor donor = family.donor();
        if (donor == null) {
            sentences.add(
                    "The axle loads of the donor vehicle are not known: only masses are told here, no axle loads.");
        }
        unplaced(sentences);
        about(
                family.weights().removed().isEmpty(),
                "Nothing is known to come off the donor vehicle, so masses and loads after conversion are told too high and not"
                        + " compared with the market's limit.",
                sentences);
        about(
                family.weights().aboard().isEmpty(),
                "Nobody's seat and no place for luggage is known: limits are compared with the empty vehicle only.",
                sentences);
        about(limit == null, "No limit on the change of mass is known for this market: ask the authority.", sentences);
        about(
                donor != null && donor.usual().centreHeightMm() == null,
                "The height of the donor's centre of gravity is not known: nothing is said about heights.",
                sentences);
        extras(sentences);
        return List.copyOf(sentences);
    }

    private void unplaced(List<String> sentences) {
        List<Added> unplaced = added.stream().filter(Added::unplaced).toList();
        if (!unplaced.isEmpty()) {
            BigDecimal kg = unplaced.stream().map(Added::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
            List<String> names = unplaced.stream()
                    .map(each -> each.item().position().name().text())
                    .distinct()
                    .toList();
            String first = names.stream().limit(NAMED).collect(Collectors.joining(", "));
            String more = names.size() > NAMED ? " and " + (names.size() - NAMED) + " more" : "";
            sentences.add(Digits.plain(kg) + " kg of the kit have no station, so there are no axle"
                    + " loads: add one for " + first + more + ", or for their sub-system.");
        }
    }

    private void extras(List<String> sentences) {
        List<String> unweighed = bill.order().extra().stream()
                .filter(each -> ExtraLoad.of(each, catalogue).isEmpty())
                .map(each -> ExtraLoad.says(each, catalogue))
                .toList();
        about(
                !unweighed.isEmpty(),
                "Extras whose mass or place is not known are left out: " + String.join(", ", unweighed)
                        + ". Give them 'massKg' and 'stationMm' in the order.",
                sentences);
    }

    private static void about(boolean lacking, String sentence, List<String> sentences) {
        if (lacking) {
            sentences.add(sentence);
        }
    }
}

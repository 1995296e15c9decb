package boltlore.trades.cutting;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Measure;
import boltlore.findings.Finding;
import java.util.List;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A dimension that nobody has measured yet, and parts of the order's kit that are cut to it.
 *
 * @param parts their numbers
 */
record Unmeasured(String order, Measure measure, SortedSet<String> parts) {

    static List<Unmeasured> of(Bill bill) {
        return bill.order().choices().family().measures().stream()
                .filter(measure -> !bill.order().measuredMm().containsKey(measure.name()))
                .map(measure -> new Unmeasured(bill.order().name(), measure, cutTo(measure, bill)))
                .filter(open -> !open.parts().isEmpty())
                .toList();
    }

    private static SortedSet<String> cutTo(Measure measure, Bill bill) {
        SortedSet<String> parts = new TreeSet<>();
        bill.all()
                .map(Item::part)
                .filter(part -> part.making().cuts().stream()
                        .map(Cut::measured)
                        .filter(Objects::nonNull)
                        .anyMatch(measured -> measured.measure().equals(measure.name())))
                .forEach(part -> parts.add(part.number().text()));
        return parts;
    }

    Finding finding() {
        return Finding.of(
                CuttingFinding.DIMENSION_NOT_MEASURED,
                order + " " + measure.name(),
                "order",
                order,
                "asks",
                measure.asks(),
                "from",
                measure.fromMm(),
                "to",
                measure.toMm(),
                "usual",
                measure.usualMm(),
                "parts",
                List.copyOf(parts));
    }
}

package boltlore.trades.spares;

import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.Part;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The old numbers under which parts of this kit went out before: who asks for one of those gets what follows it. */
final class Superseded {

    /** An old part, and the current one at the end of its successors. */
    private record Old(Part part, Part current) {

        Upkeep.Successor successor() {
            return Objects.requireNonNull(part.upkeep().replacedBy(), "only superseded parts are listed");
        }
    }

    private static final String KEPT =
            "An old part goes out as a spare only where 'yes' stands; it is fitted in no kit.";

    private static final TableSpec<Old> NUMBERS = TableSpec.<Old>named("superseded")
            .text("old", "Old number", old -> old.part().number().text())
            .said("oldName", "Name", 30, old -> old.part().name())
            .text("next", "Replaced by", old -> old.successor().part().text())
            .text("from", "From issue", old -> old.successor().from())
            .text("current", "Current number", old -> old.current().number().text())
            .said(
                    "currentName",
                    "Name of the current part",
                    30,
                    old -> old.current().name())
            .text("kept", "Old one still a spare", old -> old.successor().serviceOnly() ? "yes" : "no");

    private Superseded() {}

    static void add(PageBuilder page, KitInWork kit) {
        List<Old> old = old(kit);
        if (!old.isEmpty()) {
            page.heading("Superseded numbers").add(NUMBERS.of(old)).note(KEPT);
            old.stream().filter(each -> !each.part().superseded()).forEach(each -> page.note(dated(each)));
        }
    }

    /** 'PU-0 is replaced for orders placed from 2026-05-01.' */
    private static String dated(Old old) {
        Effectivity since = old.successor().since();
        String from = since.from() != null
                ? "for orders placed from " + since.from()
                : "from chassis number " + since.fromChassis() + " on";
        return old.part().number() + " is replaced " + from + "; earlier orders got it.";
    }

    private static List<Old> old(KitInWork kit) {
        Catalogue catalogue = kit.catalogue();
        Set<PartNumber> held =
                kit.bill().all().map(Item::part).map(Part::number).collect(Collectors.toSet());
        return catalogue.parts().values().stream()
                .filter(part -> part.upkeep().replacedBy() != null)
                .map(part -> new Old(part, catalogue.part(catalogue.current(part.number()))))
                .filter(each -> held.contains(each.current().number()))
                .toList();
    }
}

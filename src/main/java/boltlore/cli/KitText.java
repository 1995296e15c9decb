package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.charging.PowerNote;
import boltlore.explanation.FindingWords;
import boltlore.pricing.PricedBill;
import boltlore.resolution.Finding;
import boltlore.resolution.Severity;
import boltlore.sheets.bill.BillWorkbook;
import java.nio.file.Path;

/** An order and what became of it, for the screen: its kit in figures, then its findings, the most serious first. */
final class KitText {

    private KitText() {}

    static void print(Screen screen, OrderKit kit) {
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        findings(screen, kit);
    }

    static void print(Screen screen, Catalogue catalogue, Finished finished) {
        OrderKit kit = finished.kit();
        if (kit == null) {
            return;
        }
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        Bill bill = kit.bill();
        if (bill != null) {
            figures(screen, catalogue, bill);
        }
        findings(screen, kit);
        if (!finished.written().isEmpty()) {
            screen.wrapped(2, "sheets in " + folder(finished));
        } else if (kit.resolution().stops()) {
            screen.wrapped(2, "No sheet was written: mend what stops, and run it again.");
        }
    }

    /** The workbooks are written first, right into the order's folder. */
    private static Path folder(Finished finished) {
        Path parent = finished.written().get(0).getParent();
        return parent == null ? Path.of("") : parent;
    }

    private static void figures(Screen screen, Catalogue catalogue, Bill bill) {
        PricedBill priced = BillWorkbook.price(bill, catalogue);
        screen.wrapped(
                2,
                bill.resolved().kit().lines().size() + " lines, "
                        + bill.resolved().kit().quantities().size() + " part numbers; "
                        + KitFigures.of(priced));
    }

    static void findings(Screen screen, OrderKit kit) {
        FindingWords words = new FindingWords(kit.order().choices().family());
        for (Severity severity : Severity.values()) {
            for (Finding finding : kit.resolution().findings()) {
                if (finding.severity() == severity) {
                    String head = severity.says() + ": " + finding.kind().written();
                    String power = PowerNote.of(finding, kit.order().choices())
                            .map(note -> ". " + note)
                            .orElse("");
                    screen.wrapped(2, head + ": " + words.of(finding) + power);
                }
            }
        }
    }
}

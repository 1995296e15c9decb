package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.explanation.FindingWords;
import boltlore.resolution.Finding;
import boltlore.resolution.Kit;
import boltlore.resolution.Severity;
import boltlore.trades.charging.PowerNote;
import boltlore.trades.costing.quote.OrderPricing;
import java.nio.file.Path;

/** An order and what became of it, for the screen: its kit in figures, then its findings, the most serious first. */
final class KitText {

    private KitText() {}

    static void print(Screen screen, OrderKit kit) {
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        findings(screen, kit);
    }

    static void print(Screen screen, Kitted kitted) {
        OrderKit kit = kitted.kit();
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        OrderPricing priced = kitted.priced();
        if (priced != null) {
            figures(screen, priced);
        }
        findings(screen, kit);
        kitted.stops().forEach(says -> screen.wrapped(2, "must be mended: " + says));
        if (!kitted.written().isEmpty()) {
            screen.wrapped(2, "sheets in " + folder(kitted));
        } else if (kit.resolution().stops()) {
            screen.wrapped(2, "No sheet was written: mend what stops, and run it again.");
        }
    }

    /** The workbooks are written first, right into the order's folder. */
    private static Path folder(Kitted kitted) {
        Path parent = kitted.written().get(0).getParent();
        return parent == null ? Path.of("") : parent;
    }

    private static void figures(Screen screen, OrderPricing priced) {
        Kit kit = priced.priced().bill().resolved().kit();
        screen.wrapped(
                2,
                kit.lines().size() + " lines, " + kit.quantities().size() + " part numbers; "
                        + KitFigures.withCost(priced) + ".");
        KitFigures.noPrice(priced).ifPresent(note -> screen.wrapped(2, note));
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

package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.explanation.FindingWords;
import boltlore.resolution.Finding;
import boltlore.resolution.Severity;

/** An order's findings for the screen, the most serious first. */
final class KitText {

    private KitText() {}

    static void print(Screen screen, OrderKit kit) {
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        findings(screen, kit);
    }

    static void findings(Screen screen, OrderKit kit) {
        FindingWords words = new FindingWords(kit.order().choices().family());
        for (Severity severity : Severity.values()) {
            for (Finding finding : kit.resolution().findings()) {
                if (finding.severity() == severity) {
                    String head = severity.says() + ": " + finding.kind().written();
                    screen.wrapped(2, head + ": " + words.of(finding));
                }
            }
        }
    }
}

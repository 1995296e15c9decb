package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.explanation.FindingWords;
import boltlore.resolution.Finding;
import boltlore.resolution.Severity;

/** An order's findings for the screen, the most serious first. */
final class KitText {

    private KitText() {}

    static void print(Screen screen, OrderKit kit) {
        FindingWords words = new FindingWords(kit.order().choices().family());
        screen.heading(kit.order().name() + ", " + kit.order().customer());
        for (Severity severity : Severity.values()) {
            for (Finding finding : kit.resolution().findings()) {
                if (finding.severity() == severity) {
                    screen.wrapped(2, severity.says() + ": " + finding.kind().written() + ": " + words.of(finding));
                }
            }
        }
    }
}

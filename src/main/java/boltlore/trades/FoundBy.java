package boltlore.trades;

import boltlore.catalogue.Accepted;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.order.Waiver;
import java.util.Optional;

/**
 * What was found of one order, by one trade or by the rules of the kit.
 *
 * @param by the trade's name, or 'kit'
 */
public record FoundBy(String by, Findings findings) {

    /** What the order waives and the family accepts becomes a note that says so; what stops is never waived. */
    public static FoundBy of(String by, Findings findings, Order order) {
        return new FoundBy(by, findings.each(finding -> answered(finding, order)));
    }

    private static Finding answered(Finding finding, Order order) {
        if (!finding.kind().waivable()) {
            return finding;
        }
        Optional<Finding> waived = order.waived().stream()
                .filter(waiver -> speaksOf(waiver, finding))
                .map(waiver -> waived(finding, waiver))
                .findFirst();
        return waived.or(() -> order.choices().family().accepted().stream()
                        .filter(accepted -> accepted.finding().equals(name(finding)))
                        .map(accepted -> accepted(finding, accepted))
                        .findFirst())
                .orElse(finding);
    }

    /** Whether the waiver is of that finding. */
    public static boolean speaksOf(Waiver waiver, Finding finding) {
        return waiver.finding().equalsIgnoreCase(finding.kind().code())
                && (waiver.subject().isEmpty() || waiver.subject().equals(finding.subject()));
    }

    private static Finding waived(Finding finding, Waiver waiver) {
        return Finding.of(
                KitFinding.WAIVED_IN_ORDER,
                finding.subject(),
                "finding",
                finding,
                "who",
                waiver.who(),
                "when",
                waiver.when(),
                "why",
                waiver.why());
    }

    private static Finding accepted(Finding finding, Accepted accepted) {
        return Finding.of(
                KitFinding.ACCEPTED_IN_FAMILY, finding.subject(), "finding", finding, "why", accepted.because());
    }

    /** As a family accepts it, and as it is shown to whoever wants to waive it: 'load above fuse: Battery'. */
    public static String name(Finding finding) {
        return finding.kind().code() + ": " + finding.subject();
    }
}

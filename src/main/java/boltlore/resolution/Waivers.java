package boltlore.resolution;

import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.findings.Kind;
import boltlore.findings.Severity;
import boltlore.order.Order;
import boltlore.order.Waiver;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Stream;

/** Findings that someone has checked and answers for; a Stop cannot be waived. */
final class Waivers {

    private Waivers() {}

    static List<Fault> faults(Order order, Collection<Kind> others) {
        List<String> waivable = waivable(others);
        List<Fault> faults = new ArrayList<>();
        int number = 0;
        for (Waiver waiver : order.waived()) {
            String place = "/waived/" + number++ + "/finding";
            Optional<Kind> kind = kinds(others)
                    .filter(each -> each.code().equalsIgnoreCase(waiver.finding()))
                    .findFirst();
            if (kind.isEmpty()) {
                faults.add(new Fault(
                        "",
                        0,
                        place,
                        "'" + waiver.finding() + "'",
                        "a kind of finding that does not stop: " + String.join(", ", waivable),
                        Nearest.advice(waiver.finding(), waivable, "Write the finding as the kit names it")));
            } else if (kind.get().severity() == Severity.STOP) {
                faults.add(new Fault(
                        "",
                        0,
                        place,
                        "'" + waiver.finding() + "', a Stop",
                        "a kind of finding that does not stop: " + String.join(", ", waivable),
                        "Mend the order or the catalogue; this finding cannot be waived"));
            }
        }
        return faults;
    }

    /** Puts the waiver in the place of the findings that it speaks of. */
    static void apply(Waiver waiver, SortedSet<Finding> findings) {
        List<Finding> spokenOf =
                findings.stream().filter(finding -> speaksOf(waiver, finding)).toList();
        for (Finding finding : spokenOf) {
            findings.remove(finding);
            findings.add(new Finding(
                    FindingKind.WAIVED,
                    finding.kind().written() + ": " + finding.subject(),
                    waiver.who() + ", " + waiver.when() + ": " + waiver.why()));
        }
    }

    private static boolean speaksOf(Waiver waiver, Finding finding) {
        return finding.severity() == Severity.CHECK
                && finding.kind().written().equalsIgnoreCase(waiver.finding())
                && (waiver.subject().isEmpty() || waiver.subject().equals(finding.subject()));
    }

    private static List<String> waivable(Collection<Kind> others) {
        return kinds(others).filter(Kind::waivable).map(Kind::code).toList();
    }

    private static Stream<Kind> kinds(Collection<Kind> others) {
        return Stream.concat(Stream.of(FindingKind.values()), others.stream());
    }
}

package boltlore.proof;

import boltlore.catalogue.Accepted;
import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.findings.Kind;
import boltlore.findings.Severity;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which kinds of findings a family's file may accept: those that proofs judge, and those that trades have of kits. */
public final class Acceptable {

    private final Map<String, String> whyNot = new TreeMap<>();

    /**
     * All kinds that there are.
     *
     * @param proved kinds that proofs judge
     * @param byTrades kinds that only show in the kit of an order
     */
    public Acceptable(Collection<StatementKind> proved, Collection<Kind> byTrades) {
        List.of(FindingKind.values()).forEach(kind -> whyNot.put(kind.code(), whyNot(kind.severity(), false)));
        byTrades.forEach(kind -> whyNot.put(kind.code(), whyNot(kind.severity(), kind.waivable())));
        proved.forEach(kind -> whyNot.put(kind.name(), whyNot(kind.severity(), true)));
    }

    private static String whyNot(Severity severity, boolean ofFamilies) {
        return switch (severity) {
            case STOP -> "a Stop";
            case CHECK -> ofFamilies ? "" : "which each order decides on";
            case NOTE -> "which is told and asks for nothing";
        };
    }

    /** What a family accepts of no kind that there is, or of a kind that cannot be accepted. */
    public List<Fault> faults(Family family, String file) {
        List<String> known = whyNot.entrySet().stream()
                .filter(kind -> kind.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .toList();
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < family.accepted().size(); i++) {
            String finding = family.accepted().get(i).finding();
            String why = kindOf(finding).map(whyNot::get).orElse("which is no kind of finding");
            if (!why.isEmpty()) {
                faults.add(new Fault(
                        file,
                        0,
                        "/accepted/" + i + "/finding",
                        "'" + finding + "', " + why,
                        "a kind of finding to check, then ': ' and what it is about: " + String.join(", ", known),
                        kindOf(finding).isPresent()
                                ? "Take it out; this finding cannot be accepted"
                                : Nearest.advice(finding.split(":", 2)[0], known, "Write it as it is told")));
            }
        }
        return faults;
    }

    private Optional<String> kindOf(String finding) {
        return whyNot.keySet().stream().filter(kind -> isOf(kind, finding)).findFirst();
    }

    /** Whether what is accepted is a finding of that kind. */
    static boolean isOf(String kind, String finding) {
        return finding.equals(kind) || finding.startsWith(kind + ": ");
    }

    /** Whether what is accepted is of a kind that proofs judge. */
    static boolean isJudged(Accepted accepted, Collection<StatementKind> proved) {
        return proved.stream().anyMatch(kind -> isOf(kind.name(), accepted.finding()));
    }
}

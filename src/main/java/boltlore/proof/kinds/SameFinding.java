package boltlore.proof.kinds;

import boltlore.logic.Any;
import boltlore.measure.LineName;
import boltlore.proof.PossibleFinding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Findings with the same subject and detail that come about in several ways are one finding. */
final class SameFinding {

    private record Key(String subject, String detail) {}

    private SameFinding() {}

    static List<PossibleFinding> merged(List<PossibleFinding> all) {
        Map<Key, PossibleFinding> byName = new LinkedHashMap<>();
        for (PossibleFinding finding : all) {
            byName.merge(new Key(finding.subject(), finding.detail()), finding, SameFinding::either);
        }
        return List.copyOf(byName.values());
    }

    private static PossibleFinding either(PossibleFinding one, PossibleFinding other) {
        List<LineName> lines = Stream.concat(one.lines().stream(), other.lines().stream())
                .distinct()
                .toList();
        return new PossibleFinding(
                one.subject(),
                one.detail(),
                one.when().flatMap(left -> other.when().map(right -> Any.of(left, right))),
                lines,
                one.says());
    }
}

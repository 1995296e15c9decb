package boltlore.proof.revision;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Change;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which notes of the later revision, that the earlier one does not hold, explain what has become of a part. */
final class ChangeNotes {

    private final Catalogue before;
    private final Catalogue after;
    private final Family later;
    private final Family earlier;
    private final Map<LineName, List<Change>> known = new HashMap<>();

    ChangeNotes(Catalogue before, Catalogue after, String family) {
        this.before = before;
        this.after = after;
        this.earlier = before.family(family);
        this.later = after.family(family);
        earlier.lines().forEach(line -> known.put(line.name(), line.changes()));
    }

    /** Notes of the part itself, of the lines at the positions where it stands or stood, and of parts that hold or need it. */
    List<RevisionNote> of(PartNumber part) {
        Set<RevisionNote> notes = new LinkedHashSet<>();
        own(part, notes);
        after.parts().values().stream()
                .filter(other -> brings(other, part) || was(other.number(), part))
                .forEach(other -> own(other.number(), notes));
        later.positions().stream()
                .filter(position -> stands(position, part))
                .flatMap(position -> position.lines().stream())
                .forEach(line -> fresh(
                        line.changes(),
                        known.getOrDefault(line.name(), List.of()),
                        line.name().text(),
                        notes));
        return List.copyOf(notes);
    }

    private void own(PartNumber number, Set<RevisionNote> notes) {
        Part is = after.parts().get(number);
        if (is != null) {
            Part was = before.parts().get(number);
            List<Change> then = was == null ? List.of() : was.upkeep().changes();
            fresh(is.upkeep().changes(), then, number.text(), notes);
        }
    }

    private static void fresh(List<Change> now, List<Change> then, String of, Set<RevisionNote> notes) {
        now.stream()
                .filter(change -> !then.contains(change))
                .forEach(change -> notes.add(new RevisionNote(of, change)));
    }

    private boolean was(PartNumber other, PartNumber part) {
        Part then = before.parts().get(other);
        return then != null && brings(then, part);
    }

    private static boolean brings(Part other, PartNumber part) {
        return Stream.concat(
                        other.contains().stream().map(Contained::part),
                        other.needs().stream().map(Need::part))
                .anyMatch(part::equals);
    }

    private boolean stands(Position position, PartNumber part) {
        Set<PartNumber> all = Stream.concat(Stream.of(position), earlier.position(position.name()).stream())
                .flatMap(each -> each.lines().stream())
                .flatMap(ChangeNotes::brought)
                .collect(Collectors.toSet());
        return all.contains(part);
    }

    private static Stream<PartNumber> brought(Line line) {
        return Stream.concat(Stream.of(line.part()), line.needs().stream().map(Need::part));
    }
}

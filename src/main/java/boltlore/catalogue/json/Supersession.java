package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Family;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Upkeep;
import boltlore.json.SourceLocation;
import boltlore.measure.PartNumber;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** No kit holds a superseded part, successors lead to an end, an alternate is another, current part, and what goes into an assembly is supplied. */
final class Supersession {

    private final Catalogue catalogue;
    private final Reading reading;
    private final Set<PartNumber> inLoops = new HashSet<>();

    Supersession(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check() {
        catalogue.parts().values().forEach(this::successors);
        for (Part part : catalogue.parts().values()) {
            part.contains().forEach(child -> {
                current(child.part(), child);
                supplied(child);
            });
            needs(part.needs());
            part.ports().forEach(port -> current(port.blank(), part));
            alternates(part);
        }
        catalogue.families().values().forEach(this::family);
        new DatedSupersession(catalogue, reading).check();
    }

    private void family(Family family) {
        family.lines().forEach(line -> {
            current(line.part(), line);
            needs(line.needs());
            expectations(line.expects());
        });
        family.companions().forEach(companion -> {
            needs(companion.needs());
            expectations(companion.expects());
        });
    }

    /** What the vehicle brings itself is in nothing that ships. */
    private void supplied(Contained child) {
        Part inside = catalogue.parts().get(child.part());
        if (inside != null && inside.reused()) {
            fault(
                    child,
                    "'" + child.part() + "' of the base vehicle in an assembly",
                    "parts that are supplied",
                    "Name it in a line or a need.");
        }
    }

    private void needs(List<Need> needs) {
        needs.forEach(need -> current(need.part(), need));
    }

    private void expectations(List<Expectation> expectations) {
        expectations.forEach(expectation -> {
            if (expectation.target() instanceof Expectation.OfPart of) {
                current(of.part(), expectation);
            }
        });
    }

    /** Told once for each loop, at the first of its parts. */
    private void successors(Part part) {
        Upkeep.Successor successor = part.upkeep().replacedBy();
        if (successor == null) {
            return;
        }
        early(successor);
        Set<PartNumber> chain = chain(part);
        PartNumber last = new ArrayList<>(chain).get(chain.size() - 1);
        Part end = catalogue.parts().get(last);
        Upkeep.Successor next = end == null ? null : end.upkeep().replacedBy();
        if (next != null && next.part().equals(part.number()) && inLoops.addAll(chain)) {
            String loop = chain.stream().map(PartNumber::text).collect(Collectors.joining(" → "));
            fault(
                    successor,
                    loop + " → " + part.number(),
                    "successors that lead to a current part",
                    "Remove 'replacedBy' of the part that is current.");
        }
    }

    /** Issues are compared where both are letters, or both are numbers. */
    private void early(Upkeep.Successor successor) {
        Part part = catalogue.parts().get(successor.part());
        String from = successor.from();
        if (part != null && from != null && isBefore(part.revision(), from)) {
            fault(
                    successor,
                    "'" + part.number() + "' from issue " + from + ", of which there is issue " + part.revision(),
                    "an issue that the successor has reached",
                    "Raise its 'revision' first, or leave 'replacedBy' out until then.");
        }
    }

    private static boolean isBefore(String one, String other) {
        boolean letters = one.matches("[A-Z]{1,2}") && other.matches("[A-Z]{1,2}");
        boolean numbers = one.matches("[0-9]{1,9}") && other.matches("[0-9]{1,9}");
        int byLength = Integer.compare(one.length(), other.length());
        return letters
                ? byLength < 0 || (byLength == 0 && one.compareTo(other) < 0)
                : numbers && Integer.parseInt(one) < Integer.parseInt(other);
    }

    /** The part and those that followed it, as far as each is met once. */
    private Set<PartNumber> chain(Part part) {
        Set<PartNumber> chain = new LinkedHashSet<>();
        Part at = part;
        while (at != null && chain.add(at.number())) {
            Upkeep.Successor successor = at.upkeep().replacedBy();
            at = successor == null ? null : catalogue.parts().get(successor.part());
        }
        return chain;
    }

    private void current(@Nullable PartNumber number, Object user) {
        Part part = number == null ? null : catalogue.parts().get(number);
        if (part != null && part.superseded()) {
            fault(user, "'" + number + "', which is superseded", "a current part", advice(part));
        }
    }

    private String advice(Part old) {
        List<PartNumber> chain = new ArrayList<>(chain(old));
        Part end = catalogue.parts().get(chain.get(chain.size() - 1));
        return end == null || end.superseded() ? "" : "Its successor is '" + end.number() + "'.";
    }

    private void alternates(Part part) {
        Set<PartNumber> met = new HashSet<>();
        for (Upkeep.Alternate alternate : part.upkeep().alternates()) {
            if (alternate.part().equals(part.number())) {
                fault(alternate, "'" + part.number() + "' itself", "another part", "");
            } else if (!met.add(alternate.part())) {
                fault(alternate, "'" + alternate.part() + "' a second time", "each alternate once", "");
            }
            current(alternate.part(), alternate);
        }
    }

    private void fault(Object record, String found, String expected, String advice) {
        SourceLocation location = reading.sources().of(record);
        reading.faults().add(location.fault(found, expected, advice));
    }
}

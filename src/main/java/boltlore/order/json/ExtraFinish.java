package boltlore.order.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The finish of an extra: only for what is coated, and told where the order's family does not decide it. */
final class ExtraFinish {

    private final Catalogue catalogue;
    private final Family family;

    ExtraFinish(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
    }

    /** The finish that the extra names, or empty. */
    String read(ObjectReader reader, @Nullable Part part) {
        String finish = reader.findText("finish", TextShape.NAME).orElse("");
        List<CoatingSpec> coats = part == null ? List.of() : coats(part);
        if (finish.isEmpty()) {
            decided(reader, coats);
        } else {
            known(reader, finish);
            coated(reader, finish, coats);
        }
        return finish;
    }

    private void known(ObjectReader reader, String finish) {
        Set<String> known = catalogue.finishes().keySet();
        Known.check(finish, reader.spot("finish"), known, "a finish of the catalogue", reader.faults());
    }

    private void decided(ObjectReader reader, List<CoatingSpec> coats) {
        coats.stream()
                .map(CoatingSpec::role)
                .filter(Objects::nonNull)
                .filter(role -> !family.finishes().containsKey(role))
                .distinct()
                .forEach(role -> reader.fault(
                        "a part with finish role '" + role + "', which family '" + family.name() + "' does not decide",
                        "the finish that it takes",
                        "Add 'finish'."));
    }

    private static void coated(ObjectReader reader, String finish, List<CoatingSpec> coats) {
        if (coats.isEmpty()) {
            reader.faultAt(
                    "finish",
                    "'" + finish + "' for something of which the catalogue does not say how it is coated",
                    "a part with a coat",
                    "Leave 'finish' out, or give the part a coat.");
        }
    }

    /** The coats of the part and of all that is inside, however deep. */
    private List<CoatingSpec> coats(Part part) {
        List<CoatingSpec> coats = new ArrayList<>();
        Set<PartNumber> seen = new HashSet<>();
        Deque<Part> open = new ArrayDeque<>(List.of(part));
        while (!open.isEmpty()) {
            Part next = open.remove();
            if (next.coat() != null) {
                coats.add(next.coat());
            }
            next.contains().stream()
                    .map(Contained::part)
                    .filter(seen::add)
                    .map(catalogue::part)
                    .forEach(open::add);
        }
        return coats;
    }
}

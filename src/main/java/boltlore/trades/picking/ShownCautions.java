package boltlore.trades.picking;

import boltlore.catalogue.Caution;
import boltlore.catalogue.Part;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which cautions of parts stand on a picking list; the workshop says so of each. */
final class ShownCautions {

    static final String SHEET = "picking";

    private final Map<String, Caution> known;

    ShownCautions(Map<String, Caution> known) {
        this.known = known;
    }

    List<String> of(Stream<Part> parts) {
        return parts.flatMap(part -> part.cautions().stream())
                .filter(this::shown)
                .distinct()
                .sorted()
                .toList();
    }

    private boolean shown(String code) {
        Caution caution = known.get(code);
        return caution != null && caution.sheets().contains(SHEET);
    }
}

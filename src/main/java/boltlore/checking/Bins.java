package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Stores;
import boltlore.trades.picking.Walk;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Each bin lies in an aisle of the stores and holds one part. */
final class Bins {

    private Bins() {}

    static Stream<Remark> shared(Catalogue catalogue) {
        SortedMap<String, List<Part>> byBin =
                stored(catalogue).collect(Collectors.groupingBy(Part::bin, TreeMap::new, Collectors.toList()));
        return byBin.entrySet().stream()
                .filter(bin -> bin.getValue().size() > 1)
                .map(bin -> shared(bin.getKey(), bin.getValue()));
    }

    static Stream<Remark> offTheWalk(Catalogue catalogue) {
        List<String> aisles = catalogue.workshop().aisles();
        Walk walk = new Walk(aisles);
        return stored(catalogue).filter(part -> !walk.passes(part.bin())).map(part -> offTheWalk(part, aisles));
    }

    /** A bay that lies beyond the end of its aisle, or in an aisle whose place is not told, is in no length of a walk. */
    static Stream<Remark> offTheLayout(Catalogue catalogue) {
        Stores.Layout layout = catalogue.stores().layout();
        Walk walk = Walk.of(catalogue);
        return layout == null
                ? Stream.of()
                : stored(catalogue)
                        .filter(part -> walk.passes(part.bin())
                                && walk.place(part.bin()).isEmpty())
                        .map(part -> new Remark(
                                Said.part(part),
                                Check.BIN_OFF_THE_LAYOUT,
                                "bin '" + part.bin() + "'",
                                "a bay within the " + layout.aisleLengthMm() + " mm of an aisle under 'layout'",
                                "Correct the bin, or the layout in stores.json"));
    }

    private static Stream<Part> stored(Catalogue catalogue) {
        return catalogue.parts().values().stream().filter(part -> !part.bin().isEmpty());
    }

    private static Remark shared(String bin, List<Part> parts) {
        return new Remark(
                "bin " + bin,
                Check.BIN_SHARED,
                parts.stream().map(part -> part.number().text()).sorted().collect(Collectors.joining(", ")),
                "one part in a bin",
                "Parts that look alike get mixed up: give each a bin of its own");
    }

    private static Remark offTheWalk(Part part, List<String> aisles) {
        return new Remark(
                Said.part(part),
                Check.BIN_OFF_THE_WALK,
                "bin '" + part.bin() + "'",
                "aisle, bay, rack, level and position, in one of the aisles " + String.join(", ", aisles),
                "Correct the bin, or add its aisle to 'aisles' in workshop.json, in walking order");
    }
}

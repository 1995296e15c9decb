package boltlore.trades.bill.sheets;

import boltlore.catalogue.Cut;
import boltlore.catalogue.Making;
import boltlore.catalogue.Material;
import boltlore.measure.Digits;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says what a part is made from. */
final class MakingWords {

    private final Map<String, Material> materials;

    MakingWords(Map<String, Material> materials) {
        this.materials = materials;
    }

    /** The sheet or plate and all bars, each once. */
    String material(Making making) {
        return Stream.concat(
                        Stream.ofNullable(making.material()),
                        making.cuts().stream().map(Cut::material))
                .distinct()
                .map(this::says)
                .collect(Collectors.joining("; "));
    }

    /** '2 × 640 mm, 0/45°; …' for one part. */
    String cuts(Making making) {
        return making.cuts().stream()
                .map(cut -> cut.count() + " × " + Digits.plain(cut.lengthMm()) + " mm, " + angles(cut) + "°")
                .collect(Collectors.joining("; "));
    }

    /** '0/45': the two ends. */
    String angles(Cut cut) {
        return cut.endAngles().stream().map(Digits::plain).collect(Collectors.joining("/"));
    }

    String says(String material) {
        Material known = materials.get(material);
        return known == null ? material : known.says();
    }
}

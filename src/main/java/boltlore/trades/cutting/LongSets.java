package boltlore.trades.cutting;

import boltlore.catalogue.Cut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Parts sets that no single bar holds; the bars of one set must then come from one heat. */
final class LongSets {

    private LongSets() {}

    /** As few smaller sets as first-fit decreasing makes; one of a piece alone may still not fit. */
    static List<PieceSet> parted(PieceSet set, Predicate<PieceSet> fits) {
        if (fits.test(set)) {
            return List.of(set);
        }
        List<PieceSet> parts = new ArrayList<>();
        set.cuts().stream()
                .sorted(Comparator.comparing(Cut::lengthMm).reversed())
                .forEach(cut -> {
                    for (int i = 0; i < cut.count(); i++) {
                        place(parts, set, one(cut), fits);
                    }
                });
        return parts;
    }

    private static void place(List<PieceSet> parts, PieceSet set, Cut piece, Predicate<PieceSet> fits) {
        for (int i = 0; i < parts.size(); i++) {
            List<Cut> cuts = new ArrayList<>(parts.get(i).cuts());
            cuts.add(piece);
            PieceSet longer = new PieceSet(set.order(), set.part(), set.number(), cuts);
            if (fits.test(longer)) {
                parts.set(i, longer);
                return;
            }
        }
        parts.add(new PieceSet(set.order(), set.part(), set.number(), List.of(piece)));
    }

    private static Cut one(Cut cut) {
        return new Cut(cut.material(), cut.lengthMm(), 1, cut.endAngles());
    }
}

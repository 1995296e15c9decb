package boltlore.trades.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Powder;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All coats of batches gathered by powder, with one more spray of a powder where a coat goes on another. */
final class Sprays {

    private record Key(String powder, int coat) {}

    private Sprays() {}

    /** What is in the booth first, then light to dark, then as the batches come. */
    static List<Spray> plan(List<OvenBatch> batches, BoothWays booths, CoatingShop shop) {
        Map<Key, List<Pass>> byKey = new LinkedHashMap<>();
        for (OvenBatch batch : batches) {
            for (Pass pass : passes(batch)) {
                Key key = new Key(pass.powder().powder(), pass.coat());
                byKey.computeIfAbsent(key, none -> new ArrayList<>()).add(pass);
            }
        }
        return byKey.entrySet().stream()
                .map(entry -> new Spray(entry.getKey().powder(), List.copyOf(entry.getValue())))
                .sorted(Comparator.comparing((Spray spray) -> !spray.powder().equals(booths.inBooth()))
                        .thenComparing(spray -> lightness(spray.powder(), shop), Comparator.reverseOrder()))
                .toList();
    }

    /** From the metal outwards; none where nothing of the batch goes into the oven. */
    static List<Pass> passes(OvenBatch batch) {
        List<Pass> passes = new ArrayList<>();
        for (int coat = 1;
                coat <= batch.finish().coats().size() && !batch.rows().isEmpty();
                coat++) {
            passes.add(new Pass(batch, coat));
        }
        return passes;
    }

    private static BigDecimal lightness(String code, CoatingShop shop) {
        Powder powder = shop.powders().get(code);
        BigDecimal lightness = powder == null ? null : powder.lightness();
        return lightness == null ? BigDecimal.ZERO : lightness;
    }
}

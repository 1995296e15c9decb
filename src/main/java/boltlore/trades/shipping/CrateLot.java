package boltlore.trades.shipping;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A bag with all that is in it, or one part that lies loose. */
record CrateLot(List<Packed> packed) {

    String bag() {
        return packed.get(0).goods().bag();
    }

    BigDecimal kg() {
        return packed.stream()
                .filter(each -> each.goods().eachKg() != null)
                .map(Packed::kg)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    static List<CrateLot> of(Crate crate) {
        Map<String, List<Packed>> bags = new LinkedHashMap<>();
        List<CrateLot> lots = new ArrayList<>();
        for (Packed packed : crate.packed()) {
            if (packed.goods().bag().isEmpty()) {
                lots.add(new CrateLot(List.of(packed)));
            } else {
                bags.computeIfAbsent(packed.goods().bag(), none -> new ArrayList<>())
                        .add(packed);
            }
        }
        bags.values().forEach(packed -> lots.add(new CrateLot(packed)));
        return lots;
    }
}

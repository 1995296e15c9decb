package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Own ovens and booths, outside coaters, masks and powders; ownCostPerM2 is labour, pre-treatment and gas. */
public record CoatingShop(
        Map<String, Oven> ovens,
        List<Booth> booths,
        Map<String, Coater> coaters,
        List<Mask> masks,
        Map<String, Powder> powders,
        BigDecimal ownCostPerM2,
        ChangeOvers changeOvers,
        CoatingTime time) {

    public CoatingShop(
            Map<String, Oven> ovens,
            List<Booth> booths,
            Map<String, Coater> coaters,
            List<Mask> masks,
            Map<String, Powder> powders,
            BigDecimal ownCostPerM2) {
        this(ovens, booths, coaters, masks, powders, ownCostPerM2, ChangeOvers.NONE, CoatingTime.NONE);
    }

    public Optional<Mask> maskFor(Feature feature) {
        return masks.stream()
                .filter(mask -> mask.kind() == feature.kind() && mask.size().equals(feature.size()))
                .findFirst();
    }
}

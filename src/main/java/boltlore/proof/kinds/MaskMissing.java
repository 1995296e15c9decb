package boltlore.proof.kinds;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Feature;
import boltlore.logic.Any;
import boltlore.measure.PartNumber;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A coated part with a thread, face or earth point that must stay bare, and no mask of that size. */
final class MaskMissing implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.NO_MASK;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "For every thread, face and earth point that is masked there is a mask of its size.";
    }

    @Override
    public String mend() {
        return "Buy a mask of that size and list it, correct the size, or have the thread chased after coating.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        CoatingShop shop = kit.catalogue().workshop().coating();
        List<PossibleFinding> all = new ArrayList<>();
        for (PartNumber part : kit.bringings().parts()) {
            CoatingSpec coat = kit.catalogue().part(part).coat();
            for (Feature feature : coat == null ? List.<Feature>of() : coat.features()) {
                if (feature.treat() == Feature.Treat.MASKED) {
                    all.add(missing(kit, part, feature, shop.maskFor(feature).isEmpty()));
                }
            }
        }
        return SameFinding.merged(all);
    }

    private static PossibleFinding missing(KitView kit, PartNumber part, Feature feature, boolean missing) {
        String named = feature.kind().name().toLowerCase(Locale.ROOT) + " " + feature.size();
        return PossibleFinding.of(
                part.text(),
                named,
                missing ? kit.parts().present(part) : Any.NEVER,
                DeadPart.lines(kit, part),
                "A valid order has part " + part + " coated, and there is no mask for its " + named + ".");
    }
}

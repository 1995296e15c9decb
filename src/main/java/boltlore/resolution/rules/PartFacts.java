package boltlore.resolution.rules;

import boltlore.catalogue.Coat;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Part;
import boltlore.resolution.Asker;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.rules.facts.BareFeature;
import boltlore.resolution.rules.facts.CautionStands;
import boltlore.resolution.rules.facts.Coated;
import boltlore.resolution.rules.facts.HandedPart;
import boltlore.resolution.rules.facts.MaskHeld;
import boltlore.resolution.rules.facts.PartCaution;
import boltlore.resolution.rules.facts.PickedWhole;
import java.util.ArrayList;
import java.util.List;

/** What is true of a family's parts in every order: hands, coats, masks, cautions, bins. Stated once for a family. */
public final class PartFacts {

    private PartFacts() {}

    public static List<Object> of(FamilyPlan plan) {
        List<Object> facts = new ArrayList<>();
        plan.askersFirst().forEach(number -> part(plan.part(number), facts));
        plan.catalogue()
                .workshop()
                .coating()
                .masks()
                .forEach(mask -> facts.add(new MaskHeld(FeatureName.of(mask.kind(), mask.size()))));
        plan.catalogue()
                .workshop()
                .cautions()
                .values()
                .forEach(caution ->
                        caution.sheets().forEach(sheet -> facts.add(new CautionStands(caution.code(), sheet))));
        return List.copyOf(facts);
    }

    private static void part(Part part, List<Object> facts) {
        Asker asker = new Asker.OfPart(part.number());
        if (part.handed() != null) {
            Hand hand = part.handed().hand();
            facts.add(new HandedPart(asker, part.handed().pair(), hand));
        }
        if (part.pickedWhole()) {
            facts.add(new PickedWhole(asker, !part.bin().isEmpty()));
        }
        part.cautions().forEach(caution -> facts.add(new PartCaution(asker, caution)));
        if (part.coat() != null) {
            coat(part, part.coat(), asker, facts);
        }
    }

    private static void coat(Part part, Coat coat, Asker asker, List<Object> facts) {
        facts.add(new Coated(asker, part.number(), FinishRoles.roleOf(coat)));
        for (Feature feature : coat.features()) {
            if (feature.treat() == Feature.Treat.MASKED) {
                facts.add(new BareFeature(asker, FeatureName.of(feature.kind(), feature.size())));
            }
        }
    }
}

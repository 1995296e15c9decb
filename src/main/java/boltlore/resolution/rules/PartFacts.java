package boltlore.resolution.rules;

import boltlore.catalogue.Caution;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Mask;
import boltlore.catalogue.Part;
import boltlore.catalogue.Workshop;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Requirer;
import boltlore.resolution.rules.Facts.BareFeature;
import boltlore.resolution.rules.Facts.CautionStands;
import boltlore.resolution.rules.Facts.Coated;
import boltlore.resolution.rules.Facts.HandedPart;
import boltlore.resolution.rules.Facts.MaskHeld;
import boltlore.resolution.rules.Facts.PartCaution;
import boltlore.resolution.rules.Facts.PickWatched;
import boltlore.resolution.rules.Facts.PickedWhole;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is true of a family's parts in every order: hands, coats, masks, cautions, bins. Worked out once for a family. */
public final class PartFacts {

    private final Map<PartNumber, List<Object>> byPart = new HashMap<>();
    private final List<Object> ofWorkshop = new ArrayList<>();

    public PartFacts(FamilyPlan plan) {
        plan.askersFirst().forEach(number -> byPart.put(number, factsOf(plan.part(number))));
        ofWorkshop(plan.catalogue().workshop());
    }

    private void ofWorkshop(Workshop workshop) {
        for (Mask mask : workshop.coating().masks()) {
            ofWorkshop.add(new MaskHeld(FeatureName.say(mask.kind(), mask.size())));
        }
        for (Caution caution : workshop.cautions().values()) {
            caution.sheets().forEach(sheet -> ofWorkshop.add(new CautionStands(caution.code(), sheet)));
        }
    }

    /** The facts of these parts and of the workshop. */
    List<Object> of(Collection<PartNumber> parts) {
        List<Object> facts = new ArrayList<>(ofWorkshop);
        parts.forEach(part -> facts.addAll(byPart.getOrDefault(part, List.of())));
        return facts;
    }

    private static List<Object> factsOf(Part part) {
        List<Object> facts = new ArrayList<>();
        Requirer asker = new Requirer.OfPart(part.number());
        if (part.handed() != null) {
            facts.add(new HandedPart(asker, part.handed().pair(), part.handed().hand()));
        }
        picking(part, asker, facts);
        part.cautions().forEach(caution -> facts.add(new PartCaution(asker, caution)));
        if (part.coat() != null) {
            coat(part, part.coat(), asker, facts);
        }
        return facts;
    }

    private static void picking(Part part, Requirer asker, List<Object> facts) {
        boolean binless = part.lacksBin();
        if (binless) {
            facts.add(new PickedWhole(asker, false));
        }
        if (binless || !part.pickedWhole()) {
            facts.add(new PickWatched(asker, part.number()));
        }
    }

    private static void coat(Part part, CoatingSpec coat, Requirer asker, List<Object> facts) {
        facts.add(new Coated(asker, part.number(), FinishRoles.roleOf(coat)));
        for (Feature feature : coat.features()) {
            if (feature.treat() == Feature.Treat.MASKED) {
                facts.add(new BareFeature(asker, FeatureName.say(feature.kind(), feature.size())));
            }
        }
    }
}

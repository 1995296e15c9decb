package boltlore.trial;

import boltlore.catalogue.Caution;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Mask;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Stage;
import boltlore.catalogue.Workshop;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The workshop of trial catalogues: one oven, a mask for an M8 thread, one for a 20 mm earth point. */
public final class TrialWorkshop {

    private TrialWorkshop() {}

    static Workshop with(Map<String, Caution> cautions) {
        return new Workshop(
                "Trial workshop",
                "Nowhere",
                Currency.getInstance("EUR"),
                new BigDecimal("60"),
                5,
                "en",
                List.of("en"),
                List.of(new Stage("front", Wording.english("Front"))),
                Map.of(),
                List.of("drive"),
                List.of("F"),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                cautions,
                shop());
    }

    public static Finish ownFinish(String name) {
        return new Finish(name, Wording.english(name), "blast", Set.of(), List.of(), new CoatedWhere.OwnOven("own"));
    }

    public static Finish outsideFinish(String name) {
        return new Finish(
                name,
                Wording.english(name),
                "",
                Set.of(),
                List.of(),
                new CoatedWhere.OutsideByArea("coater", BigDecimal.TEN));
    }

    private static CoatingShop shop() {
        Oven oven = new Oven(
                "own",
                "Oven",
                new EnvelopeMm(2000, 1000, 1000),
                10,
                new BigDecimal("100"),
                BigDecimal.TEN,
                new BigDecimal("60"));
        return new CoatingShop(
                Map.of("own", oven),
                List.of(),
                Map.of(),
                List.of(
                        new Mask("plug-m8", "Plug M8", Feature.Kind.THREAD, "M8"),
                        new Mask("disc-20", "Disc 20", Feature.Kind.EARTH, "20")),
                Map.of(),
                BigDecimal.TEN);
    }
}

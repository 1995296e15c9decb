package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Part;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What a self-locking nut takes before it clamps is lost to the preload, unless the wrench is set higher by it. */
final class SelfLocking {

    private static final List<String> NAMED =
            List.of("self-lock", "prevailing torque", "selbstsichernd", "klemmend", "autofrein", "frein intérieur");

    private SelfLocking() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.parts().values().stream()
                .filter(SelfLocking::lacks)
                .map(part -> new Remark(
                        Said.part(part),
                        Check.SELF_LOCKING,
                        "nothing under 'prevailing'",
                        "what it takes to turn at most before it clamps, and where that stands",
                        "Add 'prevailing' with 'torqueNm' and 'table' to its 'fixing'"));
    }

    private static boolean lacks(Part part) {
        Fixing fixing = part.fixing();
        return fixing != null
                && fixing.prevailing() == null
                && part.name().byLanguage().values().stream()
                        .map(name -> name.toLowerCase(Locale.ROOT))
                        .anyMatch(name -> NAMED.stream().anyMatch(name::contains));
    }
}

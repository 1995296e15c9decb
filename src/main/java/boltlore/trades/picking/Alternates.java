package boltlore.trades.picking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says what may be taken where a part is short. */
public final class Alternates {

    private Alternates() {}

    /** 'or HW-12 (C-01-02-A-03): same nut, other maker; or …'; null where nothing may. */
    public static @Nullable String says(Part part, Catalogue catalogue) {
        String says = part.upkeep().alternates().stream()
                .map(alternate ->
                        "or " + alternate.part() + bin(catalogue.part(alternate.part())) + ": " + alternate.because())
                .collect(Collectors.joining("; "));
        return says.isEmpty() ? null : says;
    }

    private static String bin(Part part) {
        return part.bin().isEmpty() ? "" : " (" + part.bin() + ")";
    }
}

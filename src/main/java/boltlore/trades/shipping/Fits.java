package boltlore.trades.shipping;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.util.List;

/** Whether parts can travel at all, seen without any order. */
public final class Fits {

    private Fits() {}

    /** Whether one piece, can or coil of the part goes into some crate that is meant for it. */
    public static boolean someCrate(Part part, Catalogue catalogue) {
        Goods goods = GoodsMaker.one(part, catalogue);
        CrateCapacity capacity = new CrateCapacity(catalogue.shipping());
        List<Packed> alone = List.of(new Packed(goods, BigDecimal.ONE));
        return catalogue.shipping().crates().stream()
                .filter(type -> type.onlyDangerous() == (goods.transport() != null))
                .anyMatch(type -> capacity.takesAlone(type, alone));
    }

    /** Whether it is a battery by its customs code that has no UN number, nor anything in it. */
    public static boolean unmarkedBattery(Part part, Catalogue catalogue) {
        return DangerousFindings.unmarked(GoodsMaker.one(part, catalogue)).isPresent();
    }

    /** Whether it is a lithium battery by its customs code or its caution, whatever its UN number says. */
    public static boolean lithium(Part part) {
        return DangerousFindings.lithium(part);
    }
}

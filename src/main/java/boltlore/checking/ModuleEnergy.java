package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.stream.Stream;

/** Whether the energy on a module's transport papers is its nominal voltage times its capacity. */
final class ModuleEnergy {

    /** Makers round one or the other; common practice, no source. */
    private static final BigDecimal MOST_PERCENT = BigDecimal.ONE;

    private ModuleEnergy() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .flatMap(family -> family.electrics().packs().stream())
                .flatMap(pack ->
                        Stream.ofNullable(catalogue.parts().get(pack.module())).flatMap(module -> of(pack, module)));
    }

    static Stream<Remark> of(Pack pack, Part module) {
        BigDecimal told = module.transport() == null ? null : module.transport().wattHours();
        if (told == null) {
            return Stream.empty();
        }
        BigDecimal worked = pack.moduleVolts().multiply(pack.moduleAmpHours());
        BigDecimal most = worked.multiply(MOST_PERCENT).movePointLeft(2);
        return told.subtract(worked).abs().compareTo(most) <= 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        "part " + module.number(),
                        Check.MODULE_ENERGY,
                        "'wattHours' " + Digits.plain(told),
                        Digits.plain(worked) + " Wh: " + Digits.plain(pack.moduleVolts()) + " V x "
                                + Digits.plain(pack.moduleAmpHours()) + " Ah in electrics.json, to "
                                + Digits.plain(MOST_PERCENT) + " %",
                        "Take both from the maker's data sheet: the transport document names this energy"));
    }
}

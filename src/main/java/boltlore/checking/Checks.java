package boltlore.checking;

import boltlore.catalogue.Catalogue;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** All checks, one after the other. */
public final class Checks {

    private static final List<Function<Catalogue, Stream<Remark>>> ALL = List.of(
            CoatedMass::remarks,
            AssemblyMass::remarks,
            HolesForFixings::remarks,
            CableRoutes::remarks,
            CostGiven::remarks,
            BuyingGiven::remarks,
            MakingGiven::remarks,
            CautionsGiven::remarks,
            SheetCautions::remarks,
            BondingTested::remarks,
            CoatingGiven::remarks,
            Torques::remarks,
            ElectricsGiven::remarks,
            ModuleEnergy::remarks,
            Bins::remarks,
            CratesTake::remarks,
            Translations::remarks,
            Translations::unnamedBags);

    private Checks() {}

    /** What is doubtful in the catalogue, by subject. */
    public static List<Remark> check(Catalogue catalogue) {
        return ALL.stream()
                .flatMap(check -> check.apply(catalogue))
                .distinct()
                .sorted()
                .toList();
    }
}

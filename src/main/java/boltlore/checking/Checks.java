package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Part;
import boltlore.measure.PartNumber;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All checks, one after the other. */
public final class Checks {

    /** These look at parts alone, whatever else the catalogue holds. */
    private static final List<Function<Catalogue, Stream<Remark>>> OF_PARTS = List.of(
            AssemblyMass::remarks,
            CostGiven::remarks,
            BuyingGiven::begun,
            BuyingGiven::remarks,
            MakingGiven::remarks,
            LengthContents::remarks,
            MirrorImages::remarks,
            CautionsGiven::remarks,
            KindsKept::remarks,
            Torques::remarks,
            AlternatesAgree::remarks,
            MakingGiven::drawings,
            OneThingOneName::remarks,
            Bins::shared);

    private static final List<Function<Catalogue, Stream<Remark>>> OF_ALL = List.of(
            CoatedMass::remarks,
            HolesForFixings::remarks,
            SharedHoles::remarks,
            CableRoutes::remarks,
            ThreadsMate::remarks,
            PortsOfRuns::remarks,
            SizesAgree::remarks,
            SheetCautions::remarks,
            BondingTested::remarks,
            HighVoltageTested::remarks,
            CircuitsTested::remarks,
            TestOrder::remarks,
            CoatingGiven::remarks,
            SelfLocking::remarks,
            ElectricsGiven::remarks,
            ModuleEnergy::remarks,
            PlausibleMass::remarks,
            BranchesHold::remarks,
            CablesJudged::remarks,
            CableFacts::remarks,
            PackFacts::remarks,
            ElectricLimitsUsual::remarks,
            ElectricsSaid::remarks,
            RatedAsSaid::remarks,
            StandardsNamed::remarks,
            BoundsKept::remarks,
            TestsNeeded::remarks,
            HandsFollow::remarks,
            MadeForSaid::remarks,
            Bins::offTheWalk,
            Bins::offTheLayout,
            CratesTake::remarks,
            CapacityGiven::remarks,
            WorkPriced::remarks,
            ValuesUsed::remarks,
            CountsSaid::remarks,
            StationsPlausible::remarks,
            ShopPlausible::remarks,
            UsualFigures::remarks,
            SiblingFigures::remarks,
            PricesBySize::remarks,
            MadeFigures::remarks,
            JointFigures::remarks,
            CountsFollow::remarks,
            MasksAlike::remarks,
            FinishSuitsMetal::remarks,
            SharedContacts::remarks,
            VehicleLimits::remarks,
            TradeFigures::remarks,
            Translations::remarks,
            TextsAgree::remarks,
            FamiliesAlike::remarks,
            FamiliesNear::remarks,
            PartsAlike::remarks,
            BagsAlike::remarks,
            DueAlike::remarks,
            FusesAlike::remarks,
            Translations::unnamedBags);

    /** These look whether any family names what a part holds. */
    private static final List<Function<Catalogue, Stream<Remark>>> OF_ALL_FAMILIES = List.of(CableConductors::remarks);

    /** What adds up from the parts inside an assembly. */
    private static final Set<Check> ADDED_UP = EnumSet.of(
            Check.MASS_AGAINST_AREA,
            Check.MASS_AGAINST_SCALE,
            Check.CHILD_HEAVIER,
            Check.COSTS_NOTHING,
            Check.COST_TWICE,
            Check.LIFTING,
            Check.CRATE);

    private Checks() {}

    /** What is doubtful in the catalogue, by subject. */
    public static List<Remark> check(Catalogue catalogue) {
        return run(chosen(true, true), catalogue).toList();
    }

    /**
     * What is doubtful in as much of a catalogue as could be read.
     *
     * @param faulty parts whose figures may be stand-ins, so that nothing is told of them
     * @param workshopKnown whether the workshop's own files are there to compare with
     * @param familiesKnown whether all families are there
     */
    public static List<Remark> checkRest(
            Catalogue rest, Set<PartNumber> faulty, boolean workshopKnown, boolean familiesKnown) {
        Set<String> open = subjects(rest, faulty);
        Set<String> openInside = rest.parts().values().stream()
                .filter(part -> holds(rest, part, faulty))
                .map(Said::part)
                .collect(Collectors.toSet());
        return run(chosen(workshopKnown, familiesKnown), rest)
                .filter(remark -> !open.contains(remark.about()))
                .filter(remark -> !(ADDED_UP.contains(remark.check()) && openInside.contains(remark.about())))
                .toList();
    }

    private static Stream<Function<Catalogue, Stream<Remark>>> chosen(boolean workshopKnown, boolean familiesKnown) {
        return Stream.of(
                        OF_PARTS,
                        workshopKnown ? OF_ALL : List.<Function<Catalogue, Stream<Remark>>>of(),
                        workshopKnown && familiesKnown
                                ? OF_ALL_FAMILIES
                                : List.<Function<Catalogue, Stream<Remark>>>of())
                .flatMap(List::stream);
    }

    private static Stream<Remark> run(Stream<Function<Catalogue, Stream<Remark>>> checks, Catalogue catalogue) {
        return checks.flatMap(check -> check.apply(catalogue)).distinct().sorted();
    }

    private static Set<String> subjects(Catalogue rest, Set<PartNumber> faulty) {
        Stream<String> lines = rest.families().values().stream()
                .flatMap(family -> family.lines()
                        .filter(line -> faulty.contains(line.part()))
                        .map(line -> Said.line(family, line)));
        return Stream.concat(faulty.stream().map(rest::part).map(Said::part), lines)
                .collect(Collectors.toSet());
    }

    private static boolean holds(Catalogue rest, Part part, Set<PartNumber> faulty) {
        return part.contains().stream()
                .map(Contained::part)
                .anyMatch(child -> faulty.contains(child) || holds(rest, rest.part(child), faulty));
    }
}

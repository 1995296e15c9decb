package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.ProximityKind;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an inlet or a residual-current protection is by the standard that its name gives: a plug of Type 2 codes the current of its
 * cable (IEC 61851-1, annex B), the handles of Type 1 and J3400 do not (SAE J1772, SAE J3400); J3400 has the same contacts for
 * alternating and direct current, so that contactors isolate the charger; a class A GFCI trips at 6 mA at
 * the latest (UL 943). All from memory.
 */
record StandardsNamed(Family family) {

    private static final Map<String, ProximityKind> INLETS =
            Map.of("Type 1", ProximityKind.HANDLE, "J3400", ProximityKind.HANDLE, "Type 2", ProximityKind.CABLE_CODE);

    private static final String SHARING = "J3400";

    private static final String GROUND_FAULT = "UL 943";

    /** In mA, class A of that standard. */
    private static final int GROUND_FAULT_MOST = 6;

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .map(StandardsNamed::new)
                .flatMap(named -> Stream.concat(
                        named.family.electrics().inlets().stream()
                                .flatMap(inlet -> Stream.concat(named.inlet(inlet), named.contacts(inlet))),
                        named.family.electrics().outlets().stream().flatMap(named::outlet)));
    }

    private Stream<Remark> inlet(InletWiring inlet) {
        return values(inlet.when())
                .flatMap(value -> INLETS.entrySet().stream()
                        .filter(standard -> value.says().english().contains(standard.getKey()))
                        .filter(standard -> standard.getValue() != inlet.proximity())
                        .map(standard -> remark(
                                "inlet " + family.name() + "/" + value.value(),
                                "'proximity' " + inlet.proximity().written(),
                                standard.getValue().written() + ", as " + standard.getKey()
                                        + " has it (IEC 61851-1; SAE J1772): the current of a cable is kept only where it is"
                                        + " read")));
    }

    private Stream<Remark> contacts(InletWiring inlet) {
        return values(inlet.when())
                .filter(value -> inlet.direct() != null
                        && !inlet.sharedPins()
                        && value.says().english().contains(SHARING))
                .map(
                        value -> remark(
                                "inlet " + family.name() + "/" + value.value(),
                                "direct current, and no 'sharedPins'",
                                "'sharedPins' and 'isolatedBy', as " + SHARING
                                        + " has it: without contactors the pack's charging current reaches the on-board charger"));
    }

    /** Only what the option's values name: another condition says nothing of the inlet. */
    private Stream<OptionValue> values(Condition when) {
        return when instanceof Condition.Is is
                ? is.values().stream()
                        .map(value -> family.option(is.option()).flatMap(option -> option.value(value)))
                        .flatMap(Optional::stream)
                : Stream.empty();
    }

    private Stream<Remark> outlet(Outlet outlet) {
        return outlet.residual().contains(GROUND_FAULT) && outlet.tripMilliamps() > GROUND_FAULT_MOST
                ? Stream.of(remark(
                        "outlet " + family.name() + "/" + outlet.residual(),
                        "'tripMilliamps' " + outlet.tripMilliamps(),
                        "at most " + GROUND_FAULT_MOST + " mA, as " + GROUND_FAULT + " has it for class A"))
                : Stream.empty();
    }

    private static Remark remark(String about, String found, String expected) {
        return new Remark(
                about, Check.STANDARD, found, expected, "Look at the device, and mend what it does or its name");
    }
}

package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Line;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Whatever an order has exactly one of is given exactly once for every order, and packs have the modules of the kit. */
final class ElectricsGiven {

    private final Family family;
    private final Together together;

    private ElectricsGiven(Family family) {
        this.family = family;
        this.together = new Together(family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream()
                .filter(family -> !family.electrics().equals(Electrics.NONE))
                .flatMap(family -> new ElectricsGiven(family).all());
    }

    private Stream<Remark> all() {
        Electrics electrics = family.electrics();
        return Stream.of(
                        once("pack", electrics.packs(), Pack::when),
                        once("on-board charger", electrics.chargers(), OnBoardCharger::when),
                        once("inlet", electrics.inlets(), InletWiring::when),
                        once("precharge resistor", electrics.resistors(), PrechargeResistor::when),
                        electrics.inlets().stream().flatMap(this::shared),
                        electrics.packs().stream().flatMap(pack -> new ModulesOfPack(family, together).of(pack)))
                .flatMap(remarks -> remarks);
    }

    private <T> Stream<Remark> once(String what, List<T> given, Function<T, Condition> when) {
        List<Condition> conditions = given.stream().map(when).toList();
        Condition none = new Condition.Not(new Condition.AnyOf(conditions));
        Stream<Remark> missing = together.canHold(none, Condition.ALWAYS)
                ? Stream.of(remark(
                        Check.ELECTRICS_MISSING, "no " + what + " for some order", "Add one, or widen a condition"))
                : Stream.empty();
        return Stream.concat(missing, twice(what, conditions));
    }

    private Stream<Remark> twice(String what, List<Condition> conditions) {
        boolean twice = IntStream.range(0, conditions.size())
                .boxed()
                .flatMap(one ->
                        conditions.stream().skip(one + 1L).map(other -> together.canHold(conditions.get(one), other)))
                .anyMatch(holds -> holds);
        return twice
                ? Stream.of(remark(
                        Check.ELECTRICS_TWICE,
                        "two of " + what + " for some order",
                        "Let their conditions exclude" + " each other"))
                : Stream.empty();
    }

    /** Where direct and alternating current share contacts, something isolates the charger in every order. */
    private Stream<Remark> shared(InletWiring inlet) {
        PositionName isolatedBy = inlet.isolatedBy();
        if (!inlet.sharedPins()) {
            return Stream.empty();
        }
        if (isolatedBy == null) {
            return Stream.of(sharedBy("shared contacts for direct and alternating current, and no contactors"));
        }
        List<Condition> lines = family.positions().stream()
                .filter(position -> position.name().equals(isolatedBy))
                .flatMap(position -> position.lines().stream())
                .map(Line::when)
                .toList();
        return together.canHold(inlet.when(), new Condition.Not(new Condition.AnyOf(lines)))
                ? Stream.of(sharedBy("position '" + isolatedBy + "' empty in some order with this inlet"))
                : Stream.empty();
    }

    private Remark sharedBy(String found) {
        return new Remark(
                "inlet " + family.name(),
                Check.SHARED_PINS,
                found,
                "contactors that isolate the on-board charger while direct current flows",
                "Name their position in 'isolatedBy', and let a line of it stand in every order with this inlet");
    }

    private Remark remark(Check check, String found, String advice) {
        return new Remark("electrics " + family.name(), check, found, "exactly one for each order", advice);
    }
}

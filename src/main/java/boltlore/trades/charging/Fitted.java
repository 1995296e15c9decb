package boltlore.trades.charging;

import boltlore.bill.Bill;
import boltlore.catalogue.Branch;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Condition;
import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Facts;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.findings.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What of a family's high-voltage system belongs to one order. What the family does not say, or says twice, is null and
 * found missing.
 *
 * @param apart what an inlet for direct current alone bears; null where the order has none
 * @param lead the loose cable for public points that the kit has, or null
 */
public record Fitted(
        @Nullable Pack pack,
        @Nullable OnBoardCharger charger,
        @Nullable InletWiring inlet,
        @Nullable DirectLimit apart,
        List<Capacitor> capacitors,
        @Nullable PrechargeResistor resistor,
        List<Branch> branches,
        @Nullable PublicLead lead,
        @Nullable Outlet outlet,
        List<Finding> missing) {

    static Fitted of(Electrics electrics, Bill bill) {
        Choosing choosing = new Choosing(bill.resolved().choices(), new ArrayList<>());
        boolean exports = bill.resolved().choices().facts(Role.EXPORT).socket() != null;
        return new Fitted(
                choosing.one("battery pack", electrics.packs(), Pack::when),
                choosing.one("on-board charger", electrics.chargers(), OnBoardCharger::when),
                choosing.one("wiring of the inlet", electrics.inlets(), InletWiring::when),
                apart(bill.resolved().choices().facts(Role.DC_INLET)),
                choosing.all(electrics.capacitors(), Capacitor::when),
                choosing.one("precharge resistor", electrics.resistors(), PrechargeResistor::when),
                choosing.all(electrics.branches(), Branch::when).stream()
                        .filter(branch -> isThere(branch, bill))
                        .toList(),
                electrics.leads().stream()
                        .filter(lead -> bill.quantities().containsKey(lead.part()))
                        .findFirst()
                        .orElse(null),
                exports ? choosing.one("guard of the V2L outlet", electrics.outlets(), Outlet::when) : null,
                choosing.missing());
    }

    static @Nullable DirectLimit apart(Facts inlet) {
        return inlet.volts() == null || inlet.amps() == null ? null : new DirectLimit(inlet.volts(), inlet.amps());
    }

    /** What the inlet that passes direct current bears, the one for it alone where there is one; null where none does. */
    @Nullable
    DirectLimit direct() {
        if (apart != null) {
            return apart;
        }
        return inlet == null ? null : inlet.direct();
    }

    private static boolean isThere(Branch branch, Bill bill) {
        return bill.items().stream().anyMatch(item -> item.position().name().equals(branch.position()));
    }

    private record Choosing(Choices choices, List<Finding> missing) {

        <T> List<T> all(List<T> from, Function<T, Condition> when) {
            return from.stream()
                    .filter(each -> Conditions.holds(when.apply(each), choices))
                    .toList();
        }

        <T> @Nullable T one(String what, List<T> from, Function<T, Condition> when) {
            List<T> found = all(from, when);
            if (found.size() == 1) {
                return found.get(0);
            }
            missing.add(
                    Finding.of(ChargingFinding.NOT_GIVEN_ONCE, what, "count", found.isEmpty() ? 0 : 2, "what", what));
            return null;
        }
    }
}

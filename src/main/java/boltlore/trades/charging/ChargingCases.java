package boltlore.trades.charging;

import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Condition;
import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Facts;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.OnBoardCharger;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.findings.Finding;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.LineName;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The cases that options make of what charging compares, each with the orders that are in it, as a condition over options. */
final class ChargingCases {

    /**
     * A finding, and the orders that have it.
     *
     * @param when they do, as a condition over options; empty where that outgrew its bound
     */
    record Case(Optional<Condition> when, Finding finding, List<LineName> lines) {}

    /** A value of an option, or that there is no such option. */
    record Chosen(Condition when, Facts facts) {}

    private final KitView kit;
    private final Electrics electrics;
    private final List<Case> cases = new ArrayList<>();

    ChargingCases(KitView kit) {
        this.kit = kit;
        this.electrics = kit.family().electrics();
    }

    List<Case> all() {
        if (electrics.equals(Electrics.NONE)) {
            return List.of();
        }
        for (Pack pack : electrics.packs()) {
            chargers(pack);
            inlets(pack);
            links(pack);
        }
        electrics.inlets().forEach(this::shared);
        electrics.resistors().forEach(this::resistor);
        electrics.leads().forEach(this::lead);
        onceEach();
        cases.addAll(new BranchCases(kit).all());
        return List.copyOf(cases);
    }

    /** The values of the option in that role; where there is none, one without facts that every order has. */
    static List<Chosen> values(KitView kit, Role role) {
        List<Chosen> values = kit.family().options().stream()
                .filter(option -> option.role() == role)
                .flatMap(option -> option.values().stream().map(value -> chosen(option, value)))
                .toList();
        return values.isEmpty() ? List.of(new Chosen(Condition.ALWAYS, Facts.NONE)) : values;
    }

    private static Chosen chosen(Option option, OptionValue value) {
        return new Chosen(new Condition.Is(option.name(), new TreeSet<>(Set.of(value.value()))), value.facts());
    }

    private void chargers(Pack pack) {
        for (OnBoardCharger charger : electrics.chargers()) {
            for (Chosen chosen : values(kit, Role.CHARGER)) {
                Fitted fitted =
                        new Fitted(pack, charger, null, null, List.of(), null, List.of(), null, null, List.of());
                compare(fitted, pack, chosen.facts().kw(), pack.when(), charger.when(), chosen.when());
            }
        }
    }

    private void inlets(Pack pack) {
        for (InletWiring inlet : electrics.inlets()) {
            for (Chosen apart : values(kit, Role.DC_INLET)) {
                Fitted fitted =
                        new Fitted(pack, null, inlet, apart(apart), List.of(), null, List.of(), null, null, List.of());
                compare(fitted, pack, null, pack.when(), inlet.when(), apart.when());
            }
        }
    }

    static @Nullable DirectLimit apart(Chosen chosen) {
        return Fitted.apart(chosen.facts());
    }

    /** Every choice of capacitors: what fills through the resistor adds up. */
    private void links(Pack pack) {
        for (PrechargeResistor resistor : electrics.resistors()) {
            Subsets.of(electrics.capacitors(), capacitor -> kit.kit().unfolded(capacitor.when()))
                    .forEach(subset -> {
                        List<Capacitor> fitted = subset.in();
                        compare(
                                new Fitted(pack, null, null, null, fitted, resistor, List.of(), null, null, List.of()),
                                pack,
                                null,
                                pack.when(),
                                resistor.when(),
                                subset.when());
                    });
        }
    }

    private void compare(Fitted fitted, Pack pack, @Nullable BigDecimal chargerKw, Condition... when) {
        Precharge precharge = Precharge.of(fitted.resistor(), fitted.capacitors());
        Condition all = All.of(List.of(when).stream().map(kit.kit()::unfolded).toList());
        new Comparing(null, chargerKw, fitted, electrics.limits(), pack, precharge, null)
                .all().stream()
                        .filter(comparison -> !comparison.holds())
                        .forEach(comparison -> cases.add(new Case(Optional.of(all), comparison.finding(), List.of())));
    }

    private void shared(InletWiring inlet) {
        if (inlet.sharedPins()) {
            Condition isolated =
                    inlet.isolatedBy() == null ? Any.NEVER : kit.kit().filled(inlet.isolatedBy());
            add(
                    All.of(kit.kit().unfolded(inlet.when()), Any.but(isolated)),
                    Finding.of(
                            ChargingFinding.SHARED_PINS,
                            "Inlet",
                            "position",
                            inlet.isolatedBy() == null ? "–" : inlet.isolatedBy()));
        }
    }

    private void resistor(PrechargeResistor resistor) {
        add(
                All.of(kit.kit().unfolded(resistor.when()), Any.but(kit.parts().present(resistor.part()))),
                Finding.of(
                        ChargingFinding.PART_NOT_IN_KIT, "Precharge", "about", "Precharge", "part", resistor.part()));
    }

    private void lead(PublicLead lead) {
        for (Chosen inlet : values(kit, Role.INLET)) {
            for (Chosen charger : values(kit, Role.CHARGER)) {
                LeadWires.judge(lead, inlet.facts(), charger.facts())
                        .ifPresent(found ->
                                add(All.of(kit.parts().present(lead.part()), inlet.when(), charger.when()), found));
            }
        }
    }

    private void onceEach() {
        once("battery pack", electrics.packs(), Pack::when, Condition.ALWAYS);
        once("on-board charger", electrics.chargers(), OnBoardCharger::when, Condition.ALWAYS);
        once("wiring of the inlet", electrics.inlets(), InletWiring::when, Condition.ALWAYS);
        once("precharge resistor", electrics.resistors(), PrechargeResistor::when, Condition.ALWAYS);
        Condition exports = Any.of(values(kit, Role.EXPORT).stream()
                .filter(chosen -> chosen.facts().socket() != null)
                .map(Chosen::when)
                .toList());
        once("guard of the V2L outlet", electrics.outlets(), Outlet::when, exports);
    }

    private <T> void once(String what, List<T> given, Function<T, Condition> when, Condition needed) {
        List<Condition> all = given.stream().map(when).map(kit.kit()::unfolded).toList();
        List<Condition> pairs = new ArrayList<>();
        for (int at = 0; at < all.size(); at++) {
            for (Condition other : all.subList(at + 1, all.size())) {
                pairs.add(All.of(all.get(at), other));
            }
        }
        add(All.of(needed, Any.but(Any.of(all))), notOnce(what, 0));
        add(All.of(needed, Any.of(pairs)), notOnce(what, 2));
    }

    private static Finding notOnce(String what, int count) {
        return Finding.of(ChargingFinding.NOT_GIVEN_ONCE, what, "count", count, "what", what);
    }

    private void add(Condition when, Finding finding) {
        if (!when.equals(Any.NEVER)) {
            cases.add(new Case(Optional.of(when), finding, List.of()));
        }
    }
}

package boltlore.trades.weighing;

import boltlore.bill.Bill;
import boltlore.catalogue.Aboard;
import boltlore.catalogue.Aboard.Who;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.catalogue.Market;
import boltlore.catalogue.MassLimit;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.catalogue.Weights;
import boltlore.choices.Conditions;
import boltlore.findings.Findings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Weighs the vehicle that one order's kit goes into. */
public final class Weigher {

    private final Bill bill;
    private final Family family;
    private final Catalogue catalogue;
    private final Weights weights;
    private final String era;

    private Weigher(Catalogue catalogue, Family family, Bill bill) {
        this.bill = bill;
        this.family = family;
        this.catalogue = catalogue;
        this.weights = family.weights();
        this.era = value(Role.ERA);
    }

    public static Weighing weigh(Catalogue catalogue, Family family, Bill bill) {
        return new Weigher(catalogue, family, bill).weighing();
    }

    private Weighing weighing() {
        Weighing masses = new Weighing(
                bill,
                era,
                weights.removed().stream()
                        .filter(each ->
                                Conditions.holds(each.when(), bill.resolved().choices()))
                        .toList(),
                bill.items().stream()
                        .map(item -> Added.of(item, weights, catalogue.finishes()))
                        .toList(),
                bill.order().extra().stream()
                        .flatMap(each -> ExtraLoad.of(each, catalogue).stream())
                        .toList(),
                null,
                null,
                List.of(),
                Findings.NONE);
        Donor donor = family.donor();
        Weighing weighing = donor == null ? masses : against(donor, masses);
        return weighing.with(new WeighingFindings(catalogue, family, weighing, limit()).all());
    }

    private Weighing against(Donor donor, Weighing masses) {
        OnAxles onAxles = onAxles(donor, masses);
        return new Weighing(
                bill,
                era,
                masses.removed(),
                masses.added(),
                masses.extras(),
                growth(donor.in(era), masses),
                onAxles,
                conditions(donor, onAxles),
                Findings.NONE);
    }

    private Growth growth(Chassis chassis, Weighing masses) {
        BigDecimal afterKg = chassis.massKg()
                .subtract(masses.removedKg())
                .add(masses.addedKg())
                .add(masses.extrasKg());
        // Where nothing is known to come off, the mass after is too high to be judged.
        return new Growth(chassis.massKg(), afterKg, weights.removed().isEmpty() ? null : limit());
    }

    private @Nullable MassLimit limit() {
        Market market = catalogue.workshop().markets().get(value(Role.MARKET));
        return market == null ? null : market.massLimit();
    }

    private List<RuleAnswer> conditions(Donor donor, @Nullable OnAxles onAxles) {
        MassLimit limit = limit();
        return limit == null ? List.of() : RuleAnswer.of(limit, bill, catalogue, donor, onAxles);
    }

    private String value(Role role) {
        return bill.resolved().choices().inRole(role).map(OptionValue::value).orElse("");
    }

    private @Nullable OnAxles onAxles(Donor donor, Weighing masses) {
        Chassis chassis = donor.in(era);
        Balance before = Balance.of(chassis);
        Balance after = before.minus(
                        Balance.sum(masses.removed().stream().map(each -> Balance.of(each.massKg(), each.at()))))
                .plus(Balance.sum(masses.added().stream().flatMap(each -> each.balance().stream())))
                .plus(Balance.sum(masses.extras().stream().map(ExtraLoad::balance)));
        if (masses.added().stream().anyMatch(Added::unplaced) || after.massKg().signum() <= 0) {
            return null;
        }
        List<CaseLoads> cases = cases(chassis, before, after);
        return new OnAxles(
                chassis,
                cases,
                before.centreMm(),
                after.centreMm(),
                FrontShare.of(cases.get(1).loads(), donor),
                payload(chassis, cases),
                CentreHeight.of(chassis, masses).orElse(null));
    }

    private List<CaseLoads> cases(Chassis chassis, Balance before, Balance after) {
        BigDecimal wheelbaseMm = BigDecimal.valueOf(chassis.wheelbaseMm());
        List<CaseLoads> cases = new ArrayList<>();
        cases.add(new CaseLoads(LoadCase.BEFORE, before.on(wheelbaseMm)));
        cases.add(new CaseLoads(LoadCase.UNLADEN, after.on(wheelbaseMm)));
        Balance loaded = after;
        for (Who who : Who.values()) {
            List<Aboard> going =
                    weights.aboard().stream().filter(each -> each.who() == who).toList();
            if (!going.isEmpty()) {
                loaded = loaded.plus(Balance.sum(going.stream().map(each -> Balance.of(each.massKg(), each.at()))));
                cases.add(new CaseLoads(loadedWith(who), loaded.on(wheelbaseMm)));
            }
        }
        return List.copyOf(cases);
    }

    private static LoadCase loadedWith(Who who) {
        return switch (who) {
            case DRIVER -> LoadCase.DRIVER;
            case PASSENGER -> LoadCase.PASSENGERS;
            case LUGGAGE -> LoadCase.LADEN;
        };
    }

    /** Beside driver and passengers, at the first place for luggage. */
    private @Nullable PayloadLeft payload(Chassis chassis, List<CaseLoads> cases) {
        List<CaseLoads> people =
                cases.stream().filter(each -> each.loadCase() != LoadCase.LADEN).toList();
        return weights.aboard().stream()
                .filter(each -> each.who() == Who.LUGGAGE)
                .findFirst()
                .map(each -> PayloadLeft.of(people.get(people.size() - 1).loads(), chassis, each.at()))
                .orElse(null);
    }
}

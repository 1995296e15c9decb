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
import boltlore.catalogue.Removed;
import boltlore.catalogue.Role;
import boltlore.catalogue.Weights;
import boltlore.choices.Conditions;
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

    public static Weighing of(Catalogue catalogue, Family family, Bill bill) {
        return new Weigher(catalogue, family, bill).weighing();
    }

    private Weighing weighing() {
        List<Removed> removed = weights.removed().stream()
                .filter(each -> Conditions.holds(each.when(), bill.resolved().choices()))
                .toList();
        List<Added> added = bill.items().stream()
                .map(item -> Added.of(item, weights.of(item.position()), weights.measured(item.position())))
                .toList();
        List<ExtraLoad> extras = bill.order().extra().stream()
                .flatMap(each -> ExtraLoad.of(each, catalogue).stream())
                .toList();
        List<String> missing = new Missing(catalogue, family, bill, added, limit()).sentences();
        Weighing masses = new Weighing(bill, era, removed, added, extras, missing, null, null);
        Donor donor = family.donor();
        return donor == null ? masses : against(donor, masses);
    }

    private Weighing against(Donor donor, Weighing masses) {
        return new Weighing(
                bill,
                era,
                masses.removed(),
                masses.added(),
                masses.extras(),
                masses.missing(),
                growth(donor.in(era), masses),
                onAxles(donor, masses));
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

    private String value(Role role) {
        return bill.resolved().choices().inRole(role).map(OptionValue::value).orElse("");
    }

    private @Nullable OnAxles onAxles(Donor donor, Weighing masses) {
        Chassis chassis = donor.in(era);
        Balance before = Balance.of(chassis);
        Balance after = before.minus(Loads.removed(masses.removed()))
                .plus(Loads.added(masses.added()))
                .plus(Loads.extras(masses.extras()));
        if (masses.added().stream().anyMatch(Added::unplaced) || after.massKg().signum() <= 0) {
            return null;
        }
        List<Standing> standings = standings(chassis, before, after);
        return new OnAxles(
                chassis,
                standings,
                before.centreMm(),
                after.centreMm(),
                FrontShare.of(standings.get(1).loads(), donor),
                payload(chassis, standings),
                CentreHeight.of(chassis, masses).orElse(null));
    }

    private List<Standing> standings(Chassis chassis, Balance before, Balance after) {
        BigDecimal wheelbaseMm = BigDecimal.valueOf(chassis.wheelbaseMm());
        List<Standing> standings = new ArrayList<>();
        standings.add(new Standing(Stand.DONOR, before.on(wheelbaseMm)));
        standings.add(new Standing(Stand.CONVERTED, after.on(wheelbaseMm)));
        Balance loaded = after;
        for (Who who : Who.values()) {
            List<Aboard> going =
                    weights.aboard().stream().filter(each -> each.who() == who).toList();
            if (!going.isEmpty()) {
                loaded = loaded.plus(Loads.aboard(going.stream()));
                standings.add(new Standing(standWith(who), loaded.on(wheelbaseMm)));
            }
        }
        return List.copyOf(standings);
    }

    private static Stand standWith(Who who) {
        return switch (who) {
            case DRIVER -> Stand.DRIVER;
            case PASSENGER -> Stand.PASSENGERS;
            case LUGGAGE -> Stand.LADEN;
        };
    }

    /** Beside driver and passengers, at the first place for luggage. */
    private @Nullable PayloadLeft payload(Chassis chassis, List<Standing> standings) {
        List<Standing> people =
                standings.stream().filter(each -> each.stand() != Stand.LADEN).toList();
        return weights.aboard().stream()
                .filter(each -> each.who() == Who.LUGGAGE)
                .findFirst()
                .map(each -> PayloadLeft.of(people.get(people.size() - 1).loads(), chassis, each.at()))
                .orElse(null);
    }
}

package boltlore.trades.weighing;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.catalogue.MassLimit;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import boltlore.order.Extra;
import boltlore.trades.KitFinding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Which limits are exceeded, and what a weight statement lacks.
 *
 * @param limit of the market, or null where the workshop knows of none
 */
record WeighingFindings(
        Catalogue catalogue,
        Family family,
        Weighing weighing,
        @Nullable MassLimit limit) {

    private static final int NAMED_ON_AXLE = 3;
    private static final int NAMED_WITHOUT_STATION = 4;

    Findings all() {
        List<Finding> found = new ArrayList<>();
        Donor donor = family.donor();
        if (donor == null) {
            found.add(Finding.of(
                    KitFinding.NOT_JUDGED, "donor", "trade", "Axle loads", "file", "'donor' in family.json"));
        } else {
            limits(found);
            missing(found, donor);
        }
        weighing.bill().order().extra().stream()
                .filter(each -> ExtraLoad.of(each, catalogue).isEmpty())
                .forEach(each -> found.add(notWeighed(each)));
        return new Findings(found);
    }

    /** A part has its own mass, so that only its place can be missing. */
    private Finding notWeighed(Extra extra) {
        String name = ExtraLoad.says(extra, catalogue);
        List<String> keys = extra.part() == null ? List.of("massKg", "stationMm") : List.of("stationMm");
        return Finding.of(WeighingFinding.EXTRA_NOT_WEIGHED, name, "extra", name, "keys", keys);
    }

    private void limits(List<Finding> found) {
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            about(onAxles.liftsOff(), WeighingFinding.AXLE_LIFTS_OFF, found);
            onAxles.exceeded().forEach(check -> found.add(exceeded(check, onAxles)));
            share(onAxles.frontShare(), found);
        }
        Growth growth = weighing.growth();
        if (growth != null && growth.limit() != null && growth.exceeded()) {
            found.add(Finding.of(
                    WeighingFinding.MASS_ABOVE_MARKET_LIMIT,
                    "market",
                    "over",
                    tenths(growth.overKg()),
                    "most",
                    growth.limit().mostPercent(),
                    "because",
                    growth.limit().because()));
        }
        if (growth != null && growth.limit() != null && growth.undecided()) {
            found.add(near(growth, growth.limit()));
        }
        weighing.conditions().stream()
                .filter(each -> each.answer() == RuleAnswer.Answer.NOT_MET)
                .forEach(each -> found.add(Finding.of(
                        WeighingFinding.MARKET_CONDITION_NOT_MET,
                        each.subject(),
                        "found",
                        each.found(),
                        "says",
                        each.condition().says())));
    }

    private static Finding near(Growth growth, MassLimit limit) {
        return Finding.of(
                WeighingFinding.MASS_NEAR_MARKET_LIMIT,
                "market",
                "off",
                tenths(growth.overKg().abs()),
                "above",
                growth.overKg().signum() > 0 ? 1 : 0,
                "most",
                limit.mostPercent(),
                "tolerance",
                limit.tolerancePercent(),
                "kg",
                tenths(growth.toleranceKg()),
                "because",
                limit.because());
    }

    private Finding exceeded(LimitCheck check, OnAxles onAxles) {
        return Finding.of(
                WeighingFinding.WEIGHT_ABOVE_LIMIT,
                check.limited().heading() + ", " + check.loadCase().says(),
                "case",
                check.loadCase().wording(),
                "what",
                check.limited().wording(),
                "load",
                tenths(check.loadKg()),
                "over",
                tenths(check.marginKg().negate()),
                "limit",
                tenths(check.limitKg()),
                "heaviest",
                heaviest(check.limited(), onAxles.chassis().wheelbaseMm()));
    }

    private Wording heaviest(Limited limited, int wheelbaseMm) {
        List<Added> most = weighing.heaviest(limited, wheelbaseMm).stream()
                .limit(NAMED_ON_AXLE)
                .toList();
        Map<String, String> byLanguage = new TreeMap<>();
        for (String language : limited.wording().byLanguage().keySet()) {
            List<String> named = most.stream()
                    .map(each -> each.item().part().name().in(language) + " ("
                            + each.item().part().number() + ") "
                            + sign(tenths(each.on(wheelbaseMm).on(limited)), language) + " kg")
                    .toList();
            byLanguage.put(language, String.join("; ", named));
        }
        return new Wording(byLanguage);
    }

    private static String sign(BigDecimal number, String language) {
        return language.equals(Wording.ENGLISH)
                ? number.toPlainString()
                : number.toPlainString().replace('.', ',');
    }

    private static void share(FrontShare share, List<Finding> found) {
        if (share.tooLow()) {
            found.add(Finding.of(
                    WeighingFinding.FRONT_SHARE_LOW,
                    "front axle",
                    "share",
                    tenths(share.percent()),
                    "least",
                    tenths(share.leastPercent()),
                    "family",
                    share.ofFamily() ? 1 : 0));
        }
    }

    private void missing(List<Finding> found, Donor donor) {
        unplaced(found);
        about(family.weights().removed().isEmpty(), WeighingFinding.REMOVED_NOT_KNOWN, found);
        about(family.weights().aboard().isEmpty(), WeighingFinding.LOADS_NOT_KNOWN, found);
        about(limit == null, WeighingFinding.MASS_LIMIT_NOT_KNOWN, found);
        about(donor.in(weighing.era()).centreHeightMm() == null, WeighingFinding.CENTRE_HEIGHT_NOT_KNOWN, found);
    }

    private void unplaced(List<Finding> found) {
        List<Added> unplaced = weighing.added().stream().filter(Added::unplaced).toList();
        if (unplaced.isEmpty()) {
            return;
        }
        List<String> names = unplaced.stream()
                .map(each -> each.item().position().name().text())
                .distinct()
                .toList();
        found.add(Finding.of(
                WeighingFinding.STATION_NOT_KNOWN,
                "stations",
                "kg",
                Digits.thousandths(unplaced.stream().map(Added::massKg).reduce(BigDecimal.ZERO, BigDecimal::add)),
                "positions",
                names.stream().limit(NAMED_WITHOUT_STATION).toList(),
                "more",
                Math.max(0, names.size() - NAMED_WITHOUT_STATION)));
    }

    private static void about(boolean found, WeighingFinding kind, List<Finding> all) {
        if (found) {
            all.add(Finding.of(kind, kind.code()));
        }
    }

    private static BigDecimal tenths(BigDecimal number) {
        return new BigDecimal(Digits.upTo(number, 1));
    }
}

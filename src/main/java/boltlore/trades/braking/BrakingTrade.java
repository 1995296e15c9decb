package boltlore.trades.braking;

import boltlore.catalogue.Aboard;
import boltlore.catalogue.Braking;
import boltlore.catalogue.Braking.Brakes;
import boltlore.catalogue.Braking.Vacuum;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Station;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.report.Report;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.AxleLoadsTrade;
import boltlore.trades.weighing.CaseLoads;
import boltlore.trades.weighing.Growth;
import boltlore.trades.weighing.LoadCase;
import boltlore.trades.weighing.OnAxles;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Whether the brakes still suit the vehicle's new axle loads, and how long their vacuum lasts without the pump. */
public final class BrakingTrade extends Trade {

    private static final String TITLE = "Braking";
    private static final double MM = 1000;
    private static final BigDecimal HALF = BigDecimal.valueOf(50);

    /**
     * Full strokes with no further energy after which secondary braking must still be reached where a vacuum pump is the source,
     * as it is in every conversion: Directive 71/320/EEC, Annex IV, B, 1.2.1, and UN Regulation 13, Annex 7, B, both from memory
     * and so written as the workshop's own value; where the engine is the source four will do.
     */
    static final int LEAST_APPLICATIONS = 8;

    /**
     * What can be said of one kit's brakes.
     *
     * @param balances one for each load case of the converted vehicle; empty where axle loads or brakes are not known
     * @param drive what the drive unit brakes with beside the brakes
     * @param reserve null where nothing is known of the vacuum
     */
    record Judged(
            List<AxleBalance> balances,
            Recuperation drive,
            @Nullable VacuumReserve reserve,
            Findings findings) {}

    public BrakingTrade() {
        super(
                "braking",
                Room.ENGINEERING,
                "Calculate how front and rear axle share braking before one locks, and how long the vacuum lasts without"
                        + " its pump, and write a braking sheet for each order.",
                "For no order of these can brakes be judged.",
                List.of(BrakingFinding.values()));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(BrakingTrade::work).toList());
    }

    private static TradeResult work(KitInWork kit) {
        Judged judged = judge(kit);
        return judged.balances().isEmpty() && judged.reserve() == null
                ? new TradeResult(kit.order().name(), judged.findings(), List.of())
                : TradeResult.of(kit, judged.findings(), () -> report(judged, kit));
    }

    static Judged judge(KitInWork kit) {
        Braking braking = kit.family().driving().braking();
        List<Finding> found = new ArrayList<>();
        Brakes brakes = one(kit, "'brakes' in driving.json", braking.brakes(), Brakes::when, found);
        Vacuum vacuum = one(kit, "'vacuums' in driving.json", braking.vacuums(), Vacuum::when, found);
        List<AxleBalance> balances = brakes == null ? List.of() : balances(kit, brakes);
        Recuperation drive = Recuperation.of(kit);
        if (brakes != null && balances.isEmpty()) {
            found.add(missing(kit, "'donor' with 'centreHeightMm' in family.json, or a station in weights.json,"));
        }
        balances.stream().flatMap(balance -> balance(balance, drive)).forEach(found::add);
        Stream.ofNullable(brakes).flatMap(BrakingTrade::guessed).forEach(found::add);
        VacuumReserve reserve = vacuum == null ? null : new VacuumReserve(vacuum);
        Stream.ofNullable(reserve).flatMap(BrakingTrade::reserve).forEach(found::add);
        return new Judged(balances, drive, reserve, new Findings(found));
    }

    private static <T> @Nullable T one(
            KitInWork kit, String file, List<T> from, Function<T, Condition> when, List<Finding> found) {
        List<T> held = from.stream()
                .filter(each -> Conditions.holds(when.apply(each), kit.choices()))
                .toList();
        if (held.size() == 1) {
            return held.get(0);
        }
        found.add(missing(kit, file));
        return null;
    }

    /** A vehicle that weighs something else than before needs its brakes judged; of one that nobody weighs it is a note. */
    private static Finding missing(KitInWork kit, String file) {
        Growth growth = AxleLoadsTrade.weighing(kit).growth();
        BigDecimal kg = growth == null ? BigDecimal.ZERO : growth.afterKg().subtract(growth.beforeKg());
        return kg.signum() == 0
                ? Finding.of(KitFinding.NOT_JUDGED, "braking", "trade", "Braking", "file", file)
                : Finding.of(
                        BrakingFinding.BRAKES_NOT_JUDGED,
                        "brakes",
                        "kg",
                        kg.setScale(1, RoundingMode.HALF_UP),
                        "file",
                        file);
    }

    /** In every load case of the converted vehicle; what goes aboard lifts the centre of gravity that the statement has. */
    private static List<AxleBalance> balances(KitInWork kit, Brakes brakes) {
        OnAxles onAxles = AxleLoadsTrade.weighing(kit).onAxles();
        if (onAxles == null || onAxles.height() == null) {
            return List.of();
        }
        double emptyMm = onAxles.height().afterMm().doubleValue();
        double emptyKg = onAxles.converted().totalKg().doubleValue();
        return onAxles.cases().stream()
                .filter(each -> each.loadCase() != LoadCase.BEFORE)
                .map(each -> {
                    double moment = emptyKg * emptyMm + aboard(kit, each.loadCase(), emptyMm);
                    return balance(each, moment / onAxles.chassis().wheelbaseMm(), brakes);
                })
                .toList();
    }

    private static AxleBalance balance(CaseLoads each, double momentOverBase, Brakes brakes) {
        AxleLoads loads = each.loads();
        return new AxleBalance(
                each.loadCase(),
                loads.frontKg().doubleValue(),
                loads.rearKg().doubleValue(),
                momentOverBase / loads.totalKg().doubleValue(),
                brakes);
    }

    /** Sum of mass times height of who and what is aboard in that case; a height that nobody measured is the vehicle's. */
    private static double aboard(KitInWork kit, LoadCase loadCase, double emptyMm) {
        return kit.family().weights().aboard().stream()
                .filter(each -> isIn(each.who(), loadCase))
                .mapToDouble(each -> each.massKg().doubleValue() * height(each.at(), emptyMm))
                .sum();
    }

    private static double height(Station at, double otherwise) {
        return at.heightMm() == null ? otherwise : at.heightMm();
    }

    private static boolean isIn(Aboard.Who who, LoadCase loadCase) {
        LoadCase first = switch (who) {
            case DRIVER -> LoadCase.DRIVER;
            case PASSENGER -> LoadCase.PASSENGERS;
            case LUGGAGE -> LoadCase.LADEN;
        };
        return loadCase.compareTo(first) >= 0;
    }

    /** With the brakes alone, and with the drive unit: a full battery takes nothing. */
    static Stream<Finding> balance(AxleBalance balance, Recuperation drive) {
        AxleBalance recuperating = balance.with(drive);
        List<Finding> found = new ArrayList<>();
        if (!Double.isNaN(balance.rearFirst())) {
            found.add(rearFirst(BrakingFinding.REAR_AXLE_LOCKS_FIRST, balance));
        } else if (!Double.isNaN(recuperating.rearFirst())) {
            found.add(rearFirst(BrakingFinding.REAR_AXLE_LOCKS_FIRST_RECUPERATING, recuperating));
        }
        boolean told = !found.isEmpty();
        if (isWasteful(balance, told)) {
            found.add(wasteful(balance, true));
        } else if (isWasteful(recuperating, told)) {
            found.add(wasteful(recuperating, false));
        }
        return found.stream();
    }

    private static boolean isWasteful(AxleBalance balance, boolean rearTold) {
        return !Double.isNaN(balance.wasteful()) && (!rearTold || isFront(balance, balance.wasteful()));
    }

    /** Where the rear axle locks first, that it brakes too much of the whole is said already. */
    private static boolean isFront(AxleBalance balance, double rate) {
        return balance.front(rate) >= balance.rear(rate);
    }

    private static Finding rearFirst(BrakingFinding kind, AxleBalance balance) {
        return Finding.of(
                kind,
                balance.loadCase().says(),
                "case",
                balance.loadCase().wording(),
                "rate",
                hundredths(balance.rearFirst()),
                "most",
                BigDecimal.valueOf(balance.lastRate()),
                "kn",
                BigDecimal.valueOf(balance.recuperation().newton() / MM).setScale(2, RoundingMode.HALF_UP));
    }

    private static Finding wasteful(AxleBalance balance, boolean brakesAlone) {
        double rate = balance.wasteful();
        double grip = balance.asked(rate);
        return Finding.of(
                brakesAlone ? BrakingFinding.ADHESION_NOT_USED : BrakingFinding.ADHESION_NOT_USED_RECUPERATING,
                balance.loadCase().says(),
                "case",
                balance.loadCase().wording(),
                "axle",
                isFront(balance, rate) ? 0 : 1,
                "rate",
                hundredths(rate),
                "grip",
                BigDecimal.valueOf(grip).setScale(2, RoundingMode.CEILING),
                "least",
                BigDecimal.valueOf(AxleBalance.leastRate(grip)).setScale(2, RoundingMode.CEILING));
    }

    private static BigDecimal hundredths(double rate) {
        return BigDecimal.valueOf(rate).setScale(2, RoundingMode.HALF_UP);
    }

    static Stream<Finding> guessed(Brakes brakes) {
        return brakes.kneeKn() == null && brakes.frontPercent().compareTo(HALF) == 0
                ? Stream.of(Finding.of(BrakingFinding.BRAKE_SHARE_GUESSED, "brakes", "percent", brakes.frontPercent()))
                : Stream.of();
    }

    static Stream<Finding> reserve(VacuumReserve reserve) {
        int wanted = reserve.vacuum().applications();
        Stream<Finding> few = wanted >= LEAST_APPLICATIONS
                ? Stream.of()
                : Stream.of(Finding.of(
                        BrakingFinding.VACUUM_APPLICATIONS_FEW,
                        "vacuum",
                        "wanted",
                        wanted,
                        "least",
                        LEAST_APPLICATIONS));
        return Stream.concat(few, shortOf(reserve));
    }

    private static Stream<Finding> shortOf(VacuumReserve reserve) {
        if (reserve.helped() < LEAST_APPLICATIONS) {
            return Stream.of(Finding.of(
                    BrakingFinding.VACUUM_BELOW_RULE,
                    "vacuum",
                    "helped",
                    reserve.helped(),
                    "rule",
                    LEAST_APPLICATIONS,
                    "least",
                    reserve.vacuum().leastKpa()));
        }
        return reserve.helped() >= reserve.vacuum().applications()
                ? Stream.of()
                : Stream.of(Finding.of(
                        BrakingFinding.VACUUM_RESERVE_SHORT,
                        "vacuum",
                        "helped",
                        reserve.helped(),
                        "wanted",
                        reserve.vacuum().applications(),
                        "least",
                        reserve.vacuum().leastKpa()));
    }

    private static Report report(Judged judged, KitInWork kit) {
        String footer = KitReport.footer(kit, TITLE);
        return KitReport.begin(kit, "braking", TITLE, BrakingTrade.class)
                .found(kit.answered(judged.findings()))
                .glance(BrakingPage.cases(judged).build())
                .page(BrakingPage.whole(judged, kit, footer))
                .build();
    }
}

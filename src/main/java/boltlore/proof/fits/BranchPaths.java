package boltlore.proof.fits;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pack;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import boltlore.proof.fits.BranchWays.Next;
import boltlore.proof.fits.BranchWays.Origin;
import boltlore.proof.fits.BranchWays.Way;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What electrics.json says of a branch against the energy paths of fits.json that go through its cable: what feeds it, and
 * what its current is worked out from. A branch that names too little of what lies behind it gets a cable and a fuse too
 * small, or none where the battery can feed a short circuit.
 */
final class BranchPaths {

    /** A finding of a branch, which several paths may show. */
    private record Found(FitFinding kind, Branch branch, String detail, List<Object> named) {}

    private final KitView kit;
    private final BranchWays net;
    private final List<Way> ways;
    private final Map<Found, List<Condition>> found = new LinkedHashMap<>();

    private BranchPaths(KitView kit) {
        this.kit = kit;
        this.net = new BranchWays(kit);
        this.ways = net.all();
    }

    static List<FitFinding.Possible> findings(KitView kit) {
        BranchPaths paths = new BranchPaths(kit);
        paths.ways.forEach(paths::compare);
        return paths.found.entrySet().stream()
                .map(each -> paths.possible(each.getKey(), each.getValue()))
                .toList();
    }

    private void compare(Way way) {
        fedBy(way);
        Feeds feeds = way.branch().feeds();
        if (feeds == null) {
            return;
        }
        if (way.origin() == Origin.STORE) {
            behind(way, feeds);
            share(way, feeds);
        }
        wrongKind(way, feeds)
                .ifPresent(carries -> add(
                        FitFinding.BRANCH_FEEDS_ANOTHER_KIND,
                        way,
                        way.run().name(),
                        way.when(),
                        "run",
                        way.run().name(),
                        "carries",
                        carries));
        if (feeds instanceof Feeds.Device device && way.next().isEmpty()) {
            new BranchPowers(kit, ways, this::add).drawn(way, device);
            new BranchPowers(kit, ways, this::add).behindDevice(way, device);
            new BranchCircuits(kit, ways, this::add).behind(way, device);
        }
    }

    private void fedBy(Way way) {
        expected(way)
                .filter(expected -> number(way.branch().fedBy()) != expected)
                .ifPresent(expected -> add(
                        FitFinding.BRANCH_FED_BY_ANOTHER,
                        way,
                        way.run().name(),
                        way.when(),
                        "run",
                        way.run().name(),
                        "feeds",
                        expected,
                        "said",
                        number(way.branch().fedBy())));
    }

    /** As the sentences count them; empty where the paths do not show it. */
    private Optional<Integer> expected(Way way) {
        Set<PositionName> chargers = net.ended(Flow.AC_MAINS);
        return switch (way.flow()) {
            case HV_DC -> Optional.of(0);
            case TWELVE_VOLT -> Optional.of(1);
            case AC_MAINS ->
                chargers.isEmpty() ? Optional.empty() : Optional.of(chargers.contains(way.begins()) ? 3 : 2);
            case COOLANT, REFRIGERANT -> Optional.empty();
        };
    }

    private static int number(FedBy fedBy) {
        if (fedBy instanceof FedBy.Pack) {
            return 0;
        }
        if (fedBy instanceof FedBy.LowVoltage) {
            return 1;
        }
        return fedBy instanceof FedBy.Mains ? 2 : 3;
    }

    /** Each branch behind this one is named, and none besides. */
    private void behind(Way way, Feeds feeds) {
        List<String> named = feeds instanceof Feeds.Branches all ? all.names() : List.of();
        for (Next next : way.next()) {
            if (!named.contains(next.branch().name())) {
                other(FitFinding.BRANCH_LEAVES_OUT, way, next.branch(), All.of(way.when(), next.when()));
            }
        }
        for (Branch other : kit.family().electrics().branches()) {
            if (named.contains(other.name()) && behind(way.branch()).noneMatch(other::equals)) {
                other(FitFinding.BRANCH_FEEDS_BESIDES, way, other, All.of(way.when(), net.there(other)));
            }
        }
    }

    private Stream<Branch> behind(Branch branch) {
        return ways.stream()
                .filter(way -> way.branch().equals(branch))
                .flatMap(way -> way.next().stream())
                .map(Next::branch);
    }

    private void other(FitFinding kind, Way way, Branch other, Condition when) {
        add(kind, way, other.name(), when, "other", other.says(), "name", other.name());
    }

    /** Of strings side by side each carries its part at least; what is behind a battery goes through its one cable. */
    private void share(Way way, Feeds feeds) {
        if (!(feeds instanceof Feeds.Branches all)) {
            return;
        }
        boolean links = net.begun(way.flow()).contains(way.ends());
        for (Pack pack : kit.family().electrics().packs()) {
            BigDecimal least = links && way.flow() == Flow.HV_DC
                    ? BigDecimal.ONE.divide(BigDecimal.valueOf(pack.inParallel()), MathContext.DECIMAL32)
                    : BigDecimal.ONE;
            if (all.share().compareTo(least) < 0) {
                add(
                        FitFinding.BRANCH_SHARE_TOO_SMALL,
                        way,
                        pack.name(),
                        All.of(way.when(), kit.kit().unfolded(pack.when())),
                        "share",
                        plain(all.share()),
                        "least",
                        new BigDecimal(Digits.upTo(least, 2)));
            }
        }
    }

    /** What the branch carries instead, as the sentences count it. */
    private Optional<Integer> wrongKind(Way way, Feeds feeds) {
        boolean device = feeds instanceof Feeds.Device;
        boolean open = device || feeds instanceof Feeds.Branches;
        boolean fromCharger = net.ended(Flow.AC_MAINS).contains(way.begins());
        if (way.origin() == Origin.STORE) {
            return way.next().isEmpty() && !device ? Optional.of(0) : Optional.empty();
        }
        return switch (way.flow()) {
            case HV_DC ->
                fromCharger
                        ? when(feeds != Feeds.Chosen.CHARGER_OUTPUT, 1)
                        : when(feeds != Feeds.Chosen.DIRECT_CHARGING && !(feeds instanceof Feeds.Branches), 2);
            case AC_MAINS ->
                fromCharger
                        ? when(feeds != Feeds.Chosen.OUTLET && !open, 4)
                        : when(
                                feeds != Feeds.Chosen.CHARGER_INPUT
                                        && net.begun(Flow.HV_DC).contains(way.ends()),
                                3);
            case TWELVE_VOLT -> when(!open, 0);
            case COOLANT, REFRIGERANT -> Optional.empty();
        };
    }

    private static Optional<Integer> when(boolean wrong, int carries) {
        return wrong ? Optional.of(carries) : Optional.empty();
    }

    private void add(FitFinding kind, Way way, String detail, Condition when, Object... named) {
        found.computeIfAbsent(new Found(kind, way.branch(), detail, List.of(named)), same -> new ArrayList<>())
                .add(when);
    }

    private FitFinding.Possible possible(Found each, List<Condition> when) {
        List<Object> named = new ArrayList<>(List.of("branch", each.branch().says()));
        named.addAll(each.named());
        return each.kind()
                .when(
                        Any.of(when),
                        each.branch().name(),
                        each.detail(),
                        kit.kit().position(each.branch().position()).lines().stream()
                                .map(Line::name)
                                .toList(),
                        named.toArray());
    }

    private static BigDecimal plain(BigDecimal figure) {
        return new BigDecimal(Digits.plain(figure));
    }
}

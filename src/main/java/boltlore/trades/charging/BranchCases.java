package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Condition;
import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pack;
import boltlore.catalogue.Part;
import boltlore.catalogue.PowerCable;
import boltlore.catalogue.Role;
import boltlore.findings.Finding;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import boltlore.trades.charging.ChargingCases.Case;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The cases of each cable: the packs behind it, what of what it feeds an order has at once, the currents that choices lead to,
 * and the lengths of the cables that may lie there.
 */
final class BranchCases {

    /** More things at once are more cases than can be tried. */
    private static final int MOST = 14;

    /** Currents that choices lead to, and when. */
    private record Currents(Condition when, Map<Feeds.Chosen, BigDecimal> amps) {}

    private record Length(Condition when, @Nullable Integer mm) {}

    private final KitView kit;
    private final Electrics electrics;
    private final List<Case> cases = new ArrayList<>();

    BranchCases(KitView kit) {
        this.kit = kit;
        this.electrics = kit.family().electrics();
    }

    List<Case> all() {
        for (Branch branch : electrics.branches()) {
            notAtPosition(branch);
            electrics.cable(branch.cable()).ifPresent(cable -> of(branch, cable));
        }
        return List.copyOf(cases);
    }

    private Condition there(Branch branch) {
        return All.of(kit.kit().unfolded(branch.when()), kit.kit().filled(branch.position()));
    }

    private void of(Branch branch, PowerCable cable) {
        List<Branch> fed = new ArrayList<>(fed(branch, new LinkedHashSet<>(Set.of(branch))));
        if (fed.size() > MOST) {
            Finding notJudged = Finding.of(ChargingFinding.BRANCH_NOT_JUDGED, branch.says(), "branch", branch.says());
            cases.add(new Case(Optional.empty(), notJudged, lines(branch)));
            return;
        }
        for (Pack pack : electrics.packs()) {
            Condition so = All.of(there(branch), kit.kit().unfolded(pack.when()));
            for (Currents currents : currents(pack, Stream.concat(Stream.of(branch), fed.stream()))) {
                for (Subsets<Branch> beside : Subsets.of(fed, this::there)) {
                    List<Branch> present = new ArrayList<>(beside.in());
                    present.add(branch);
                    BranchLoad load = new BranchLoads(electrics, present, pack, currents.amps())
                            .of(branch)
                            .orElse(null);
                    Condition when = All.of(so, currents.when(), beside.when());
                    ports(branch, load, when);
                    lengths(branch)
                            .forEach(length -> compare(branch, cable, pack, load, length, All.of(when, length.when())));
                }
            }
        }
    }

    private void compare(
            Branch branch, PowerCable cable, Pack pack, @Nullable BranchLoad load, Length length, Condition when) {
        BranchChecker.check(branch, electrics, cable, pack, load, length.mm()).comparisons().stream()
                .filter(comparison -> !comparison.holds())
                .forEach(comparison -> add(branch, when, comparison.finding()));
    }

    private void ports(Branch branch, @Nullable BranchLoad load, Condition when) {
        for (BranchPorts port : BranchPorts.of(kit.family(), branch)) {
            for (Line line : kit.kit().position(port.position()).lines()) {
                port.of(branch, load, kit.catalogue().part(line.part()))
                        .ifPresent(broken -> add(branch, All.of(when, kit.kit().in(line.name())), broken.finding()));
            }
        }
    }

    /** All branches that its current may come from. */
    private Set<Branch> fed(Branch branch, Set<Branch> known) {
        if (branch.feeds() instanceof Feeds.Branches feeds) {
            for (Branch below : electrics.branches()) {
                if (feeds.names().contains(below.name()) && known.add(below)) {
                    fed(below, known);
                }
            }
        }
        return known.stream().skip(1).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<Currents> currents(Pack pack, Stream<Branch> branches) {
        Set<Feeds.Chosen> asked = branches.map(Branch::feeds)
                .filter(Feeds.Chosen.class::isInstance)
                .map(Feeds.Chosen.class::cast)
                .collect(Collectors.toSet());
        List<Currents> all = List.of(new Currents(Condition.ALWAYS, Map.of()));
        for (Feeds.Chosen by : Feeds.Chosen.values()) {
            if (asked.contains(by)) {
                List<Currents> more = currents(by, pack);
                all = all.stream()
                        .flatMap(left -> more.stream().map(right -> both(left, right)))
                        .toList();
            }
        }
        return all;
    }

    private static Currents both(Currents left, Currents right) {
        Map<Feeds.Chosen, BigDecimal> amps = new EnumMap<>(Feeds.Chosen.class);
        amps.putAll(left.amps());
        amps.putAll(right.amps());
        return new Currents(All.of(left.when(), right.when()), amps);
    }

    private List<Currents> currents(Feeds.Chosen by, Pack pack) {
        Stream<Currents> all = switch (by) {
            case CHARGER_OUTPUT -> chosen(Role.CHARGER).flatMap(charger -> output(charger, pack));
            case CHARGER_INPUT -> chosen(Role.CHARGER).flatMap(this::input);
            case DIRECT_CHARGING -> chosen(Role.DC_INLET).flatMap(apart -> direct(apart, pack));
            case OUTLET -> chosen(Role.EXPORT).map(this::outlet);
        };
        return all.toList();
    }

    private Stream<Currents> output(ChargingCases.Chosen charger, Pack pack) {
        BigDecimal kw = charger.facts().kw();
        return electrics.chargers().stream()
                .map(onBoard -> one(
                        Feeds.Chosen.CHARGER_OUTPUT,
                        kw == null ? null : Comparing.chargeAmps(onBoard, kw, pack),
                        charger.when(),
                        onBoard.when()));
    }

    private Stream<Currents> input(ChargingCases.Chosen charger) {
        return chosen(Role.INLET)
                .map(inlet -> one(
                        Feeds.Chosen.CHARGER_INPUT,
                        lesser(charger.facts().amps(), inlet.facts().amps()),
                        charger.when(),
                        inlet.when()));
    }

    private Stream<Currents> direct(ChargingCases.Chosen apart, Pack pack) {
        DirectLimit own = ChargingCases.apart(apart);
        return electrics.inlets().stream().map(inlet -> {
            DirectLimit direct = own == null ? inlet.direct() : own;
            BigDecimal amps = direct == null ? null : direct.amps().min(pack.chargeAmps());
            return one(Feeds.Chosen.DIRECT_CHARGING, amps, apart.when(), inlet.when());
        });
    }

    private Currents outlet(ChargingCases.Chosen outlet) {
        BigDecimal amps =
                outlet.facts().socket() == null ? null : outlet.facts().amps();
        return one(Feeds.Chosen.OUTLET, amps, outlet.when());
    }

    private Stream<ChargingCases.Chosen> chosen(Role role) {
        return ChargingCases.values(kit, role).stream();
    }

    private static @Nullable BigDecimal lesser(@Nullable BigDecimal left, @Nullable BigDecimal right) {
        return left == null || right == null ? null : left.min(right);
    }

    private Currents one(Feeds.Chosen by, @Nullable BigDecimal amps, Condition... when) {
        Condition all = All.of(Stream.of(when).map(kit.kit()::unfolded).toList());
        return new Currents(all, amps == null ? Map.of() : Map.of(by, amps));
    }

    private List<Length> lengths(Branch branch) {
        return kit.kit().position(branch.position()).lines().stream()
                .map(line -> new Length(
                        kit.kit().in(line.name()),
                        kit.catalogue().part(line.part()).lengthMm()))
                .toList();
    }

    /** What the kit holds at the position is another cable than the one that load and fuse are held against. */
    private void notAtPosition(Branch branch) {
        List<Condition> with = kit.kit().position(branch.position()).lines().stream()
                .filter(line -> holds(kit.catalogue().part(line.part()), branch.cable()))
                .map(line -> kit.kit().in(line.name()))
                .toList();
        add(
                branch,
                All.of(there(branch), Any.but(Any.of(with))),
                Finding.of(
                        ChargingFinding.CABLE_NOT_AT_POSITION,
                        branch.says(),
                        "branch",
                        branch.says(),
                        "part",
                        branch.cable(),
                        "position",
                        branch.position()));
    }

    private boolean holds(Part part, PartNumber cable) {
        return part.number().equals(cable)
                || part.contains().stream()
                        .anyMatch(child -> holds(kit.catalogue().part(child.part()), cable));
    }

    private void add(Branch branch, Condition when, Finding finding) {
        if (!when.equals(Any.NEVER)) {
            cases.add(new Case(Optional.of(when), finding, lines(branch)));
        }
    }

    private List<LineName> lines(Branch branch) {
        return kit.kit().position(branch.position()).lines().stream()
                .map(Line::name)
                .toList();
    }
}

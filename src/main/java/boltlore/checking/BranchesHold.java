package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Line;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.findings.Finding;
import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.BranchChecker;
import boltlore.trades.charging.BranchLoad;
import boltlore.trades.charging.BranchLoads;
import boltlore.trades.charging.ChargingFinding;
import boltlore.trades.charging.Comparison;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Each cable, its load and its fuse keep their limits with every pack that may stand behind them. */
final class BranchesHold {

    private final Family family;
    private final Electrics electrics;
    private final Together together;

    private BranchesHold(Family family) {
        this.family = family;
        this.electrics = family.electrics();
        this.together = new Together(family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> new BranchesHold(family).all());
    }

    private Stream<Remark> all() {
        return electrics.branches().stream()
                .flatMap(branch -> electrics.packs().stream()
                        .filter(pack -> together.canHold(branch.when(), pack.when()))
                        .flatMap(pack -> check(branch, pack).stream())
                        .flatMap(check -> check.comparisons().stream())
                        .filter(comparison -> !comparison.holds())
                        .map(Comparison::finding)
                        .filter(finding -> finding.stops() || onlyDeclared(branch, finding))
                        .map(finding -> remark(branch, finding)));
    }

    /** What an order chooses is not known here, but a branch that feeds nothing is known not to. */
    private static boolean onlyDeclared(Branch branch, Finding finding) {
        return finding.kind() == ChargingFinding.LOAD_NOT_DERIVED && branch.feeds() == null;
    }

    private List<BranchCheck> check(Branch branch, Pack pack) {
        return electrics.cable(branch.cable()).stream()
                .map((PowerCable cable) ->
                        BranchChecker.check(branch, electrics, cable, pack, load(branch, pack), null))
                .toList();
    }

    private @Nullable BranchLoad load(Branch branch, Pack pack) {
        List<Branch> there = branch.feeds() instanceof Feeds.Branches feeds
                ? atOnce(branch, pack, feeds, Set.of(branch.name()))
                : List.of(branch);
        return new BranchLoads(electrics, there, pack, Map.of()).of(branch).orElse(null);
    }

    /**
     * Of the branches that this one feeds, as many as one order can have at once, from the first on.
     *
     * @param above branches that feed this one: what is fed by itself is told elsewhere, and has no end
     */
    private List<Branch> atOnce(Branch branch, Pack pack, Feeds.Branches feeds, Set<String> above) {
        List<Branch> there = new ArrayList<>();
        Condition so = new Condition.All(List.of(there(branch), pack.when()));
        for (Branch below : electrics.branches()) {
            if (feeds.names().contains(below.name())
                    && !above.contains(below.name())
                    && together.canHold(so, there(below))) {
                so = new Condition.All(List.of(so, there(below)));
                there.add(below);
                if (below.feeds() instanceof Feeds.Branches further) {
                    Set<String> beneath = new HashSet<>(above);
                    beneath.add(below.name());
                    there.addAll(atOnce(below, pack, further, beneath));
                }
            }
        }
        return there;
    }

    /** A branch is there where its own condition holds and some line stands at its position. */
    private Condition there(Branch branch) {
        List<Condition> lines = family.positions().stream()
                .filter(position -> position.name().equals(branch.position()))
                .flatMap(position -> position.lines().stream())
                .map(Line::when)
                .toList();
        return new Condition.All(List.of(branch.when(), new Condition.AnyOf(lines)));
    }

    private Remark remark(Branch branch, Finding finding) {
        return new Remark(
                "branch " + family.name() + "/" + branch.name(),
                Check.BRANCH,
                finding.kind().code() + ": " + finding.says().replaceAll("\\.$", ""),
                "load, fuse and cable within one another's limits",
                finding.stops()
                        ? "It stops every order that has this branch: correct electrics.json, or choose another fuse or"
                                + " cable"
                        : "Add 'feeds' to the branch");
    }
}

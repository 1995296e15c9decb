package boltlore.checking;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.findings.Finding;
import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.BranchChecker;
import boltlore.trades.charging.Comparison;
import java.util.stream.Stream;

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
                        .flatMap(pack -> checks(branch, pack))
                        .flatMap(check -> check.comparisons().stream())
                        .filter(comparison -> !comparison.holds())
                        .map(Comparison::finding)
                        .filter(Finding::stops)
                        .map(finding -> remark(branch, finding)));
    }

    private Stream<BranchCheck> checks(Branch branch, Pack pack) {
        Fuse ahead = electrics.fuses().stream()
                .filter(fuse -> fuse.name().equals(branch.fuse()))
                .findFirst()
                .orElse(null);
        return electrics.cables().stream()
                .filter(cable -> cable.part().equals(branch.cable()))
                .limit(1)
                .map((PowerCable cable) -> BranchChecker.check(branch, ahead, cable, pack));
    }

    private Remark remark(Branch branch, Finding finding) {
        return new Remark(
                "branch " + family.name() + "/" + branch.name(),
                Check.BRANCH,
                finding.kind().code() + ": " + finding.says().replaceAll("\\.$", ""),
                "load, fuse and cable within one another's limits",
                "It stops every order that has this branch: correct electrics.json, or choose another fuse or cable");
    }
}

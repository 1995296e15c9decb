package boltlore.proof.fits;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Line;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A cable that lies in the vehicle, and the fuse that electrics.json says protects it lies in no bag. */
final class BranchFuses {

    private BranchFuses() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        for (Branch branch : kit.family().electrics().branches()) {
            Branch.Protection.Fuse near = branch.protection().fuse();
            Branch.Protection.FarEnd far = branch.protection().farEnd();
            add(all, kit, branch, near == null ? null : near.name(), 0);
            add(all, kit, branch, far == null ? null : far.fuse(), 1);
        }
        return all;
    }

    private static void add(
            List<FitFinding.Possible> all, KitView kit, Branch branch, @Nullable String named, int end) {
        Electrics electrics = kit.family().electrics();
        electrics.fuse(named).ifPresent(fuse -> all.add(without(kit, branch, fuse, end)));
    }

    private static FitFinding.Possible without(KitView kit, Branch branch, Fuse fuse, int end) {
        Condition there = All.of(kit.kit().unfolded(branch.when()), kit.kit().filled(branch.position()));
        return FitFinding.BRANCH_WITHOUT_ITS_FUSE.when(
                All.of(there, Any.but(kit.parts().present(fuse.part()))),
                branch.name(),
                fuse.name(),
                kit.kit().position(branch.position()).lines().stream()
                        .map(Line::name)
                        .toList(),
                "branch",
                branch.says(),
                "fuse",
                fuse.says(),
                "part",
                BoxContents.named(kit, fuse.part()),
                "end",
                end);
    }
}

package boltlore.proof.fits;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Line;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A cable that orders have, and of which electrics.json says nothing there, or says two things at once. */
final class CableBranches {

    private CableBranches() {}

    static List<FitFinding.Possible> findings(KitView kit) {
        Map<PositionName, List<Branch>> at = new LinkedHashMap<>();
        kit.family()
                .electrics()
                .branches()
                .forEach(branch -> at.computeIfAbsent(branch.position(), first -> new ArrayList<>())
                        .add(branch));
        List<FitFinding.Possible> all = new ArrayList<>();
        at.forEach((position, branches) -> {
            all.add(found(kit, FitFinding.CABLE_WITHOUT_BRANCH, position, none(kit, branches)));
            all.add(found(kit, FitFinding.CABLE_OF_TWO_BRANCHES, position, two(kit, branches)));
        });
        return all;
    }

    private static Condition none(KitView kit, List<Branch> branches) {
        return Any.but(Any.of(branches.stream()
                .map(branch -> kit.kit().unfolded(branch.when()))
                .toList()));
    }

    private static Condition two(KitView kit, List<Branch> branches) {
        List<Condition> pairs = new ArrayList<>();
        for (int at = 0; at < branches.size(); at++) {
            for (Branch other : branches.subList(at + 1, branches.size())) {
                pairs.add(All.of(
                        kit.kit().unfolded(branches.get(at).when()), kit.kit().unfolded(other.when())));
            }
        }
        return Any.of(pairs);
    }

    private static FitFinding.Possible found(KitView kit, FitFinding kind, PositionName position, Condition when) {
        return kind.when(
                All.of(kit.kit().filled(position), when),
                position.text(),
                kind == FitFinding.CABLE_WITHOUT_BRANCH ? "none" : "several",
                kit.kit().position(position).lines().stream().map(Line::name).toList(),
                "position",
                Broken.said(kit, position));
    }
}

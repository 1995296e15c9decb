package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Part;
import boltlore.logic.Any;
import boltlore.logic.Bringing;
import boltlore.measure.PartNumber;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A part that stores pick and that has no bin. */
final class LeafWithoutBin implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.LEAF_WITHOUT_BIN;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Whatever stores pick has a bin.";
    }

    @Override
    public String mend() {
        return "Give the part a bin, or let its assembly be picked whole.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        Map<PartNumber, Condition> picked = new HashMap<>();
        List<PossibleFinding> all = new ArrayList<>();
        for (PartNumber number : kit.bringings().parts()) {
            Part part = kit.catalogue().part(number);
            if (part.lacksBin()) {
                all.add(PossibleFinding.of(
                        number.text(),
                        "",
                        picked(kit, number, picked),
                        DeadPart.lines(kit, number),
                        "A valid order has part " + number + " on the picking list, and it has no bin."));
            }
        }
        return all;
    }

    /** When a line or a need brings the part, or an assembly that is picked in its pieces contains it. */
    private static Condition picked(KitView kit, PartNumber part, Map<PartNumber, Condition> known) {
        Condition picked = known.get(part);
        if (picked == null) {
            List<Condition> ways = new ArrayList<>();
            for (Bringing way : kit.bringings().of(part)) {
                PartNumber assembly = way.how() == Bringing.How.CONTAINS ? way.asker() : null;
                if (assembly == null) {
                    ways.add(way.when());
                } else if (!kit.catalogue().part(assembly).pickedWhole()) {
                    ways.add(picked(kit, assembly, known));
                }
            }
            picked = Any.of(ways);
            known.put(part, picked);
        }
        return picked;
    }
}

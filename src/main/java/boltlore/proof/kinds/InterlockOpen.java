package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Port;
import boltlore.measure.PartNumber;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A high-voltage connector that is left open although each mate and each blank closes as many as it can. */
final class InterlockOpen implements FindingStatements {

    @Override
    public FindingKind finding() {
        return FindingKind.INTERLOCK_OPEN;
    }

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String holds() {
        return "Every high-voltage connector is mated or closed by its blank.";
    }

    @Override
    public String mend() {
        return "Add the mating part or the blank for these orders, in the quantity that all open connectors need.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        OpenPorts open = new OpenPorts(kit);
        List<PossibleFinding> all = new ArrayList<>();
        for (PartNumber part : kit.bringings().parts()) {
            for (Port port : kit.catalogue().part(part).connectors()) {
                all.add(finding(kit, part, port, open.of(part, port)));
            }
        }
        return all;
    }

    private static PossibleFinding finding(KitView kit, PartNumber part, Port port, Optional<Condition> open) {
        PartNumber blank = port.blank();
        return new PossibleFinding(
                part + "/" + port.name(),
                blank == null ? "" : blank.text(),
                open,
                DeadPart.lines(kit, part),
                "A valid order has an open connector " + port.name() + " on " + part
                        + (blank == null ? ", which has no blank." : " and too few blanks " + blank + " to close it."));
    }
}

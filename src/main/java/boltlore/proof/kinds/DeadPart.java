package boltlore.proof.kinds;

import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.logic.Bringing;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.proof.FamilyView;
import boltlore.proof.KitView;
import boltlore.proof.Question;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A part that the family's lines, assemblies or needs name, and no valid order brings. */
final class DeadPart implements StatementKind {

    @Override
    public String name() {
        return "part in no order";
    }

    @Override
    public Severity severity() {
        return Severity.CHECK;
    }

    @Override
    public String holds() {
        return "Every part that the family names is in the kit of some valid order.";
    }

    @Override
    public String mend() {
        return "Correct the conditions of the lines and needs that name the part, or take it out of the family.";
    }

    @Override
    public List<Statement> statements(FamilyView family) {
        List<Statement> all = new ArrayList<>();
        for (PartNumber part : family.kept().bringings().parts()) {
            all.add(new Statement(
                    this,
                    part.text(),
                    "",
                    "No valid order contains part " + part + " "
                            + family.catalogue().part(part).name().english() + ".",
                    Question.someOrder(family.kept().parts().present(part)),
                    Any.NEVER,
                    lines(family.kept(), part),
                    List.of()));
        }
        return all;
    }

    static List<LineName> lines(KitView kit, PartNumber part) {
        return kit.bringings().of(part).stream()
                .map(Bringing::line)
                .filter(Objects::nonNull)
                .distinct()
                .sorted()
                .toList();
    }
}

package boltlore.proof.kinds;

import boltlore.catalogue.Facts;
import boltlore.catalogue.PublicLead;
import boltlore.catalogue.Role;
import boltlore.logic.All;
import boltlore.proof.FindingStatements;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.resolution.FindingKind;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** A loose cable for public points that has fewer phases, or carries less, than inlet and charger both take. */
record LeadBelowCharger(FindingKind finding, String holds, String less, BiPredicate<PublicLead, Facts> below)
        implements FindingStatements {

    static final LeadBelowCharger PHASES = new LeadBelowCharger(
            FindingKind.LEAD_PHASES_BELOW_CHARGER,
            "Every public lead has the phases that inlet and charger both take.",
            "has fewer phases",
            (lead, facts) -> facts.phases() != null && facts.phases() > lead.phases());
    static final LeadBelowCharger AMPS = new LeadBelowCharger(
            FindingKind.LEAD_AMPS_BELOW_CHARGER,
            "Every public lead carries the current that inlet and charger both take.",
            "carries less current",
            (lead, facts) -> facts.amps() != null && facts.amps().compareTo(lead.amps()) > 0);

    @Override
    public boolean dependsOnLeftOut() {
        return true;
    }

    @Override
    public String mend() {
        return "Let the line of the lead follow the charger, not the supply at home.";
    }

    @Override
    public List<PossibleFinding> findings(KitView kit) {
        return SameFinding.merged(kit.family().electrics().leads().stream()
                .flatMap(lead -> of(kit, lead))
                .toList());
    }

    private Stream<PossibleFinding> of(KitView kit, PublicLead lead) {
        String part = lead.part().text();
        return RoleClash.clashing(
                        kit,
                        Role.CHARGER,
                        Role.INLET,
                        (charger, inlet) -> below.test(lead, charger.facts()) && below.test(lead, inlet.facts()),
                        "A valid order has public lead " + part + ", which " + less
                                + " than its inlet and charger %1$s take.")
                .stream()
                .map(pair -> new PossibleFinding(
                        part,
                        pair.subject(),
                        pair.when().map(chosen -> All.of(kit.parts().present(lead.part()), chosen)),
                        DeadPart.lines(kit, lead.part()),
                        pair.says()));
    }
}

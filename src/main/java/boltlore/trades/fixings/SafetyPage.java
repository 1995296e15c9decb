package boltlore.trades.fixings;

import boltlore.catalogue.JointFacts;
import boltlore.catalogue.JointFacts.Into;
import boltlore.catalogue.Workshop;
import boltlore.measure.Wording;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.fixings.FixingsMaker.KitFixings;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Safety joints: each is torqued with a tool that has a number, ticked and signed for. */
final class SafetyPage {

    private static final int KILO = 3;

    private static final String PRELOAD =
            "Preload at that torque and friction to VDI 2230; min. preload: divided by 1.8, the"
                    + " scatter of a torque wrench, or by the factor of the joint.";

    private static final Map<Into, Wording> INTO = Map.of(
            Into.NUT, wording("nut", "Mutter", "écrou"),
            Into.RIVET_NUT, wording("rivet nut", "Blindnietmutter", "écrou à sertir"),
            Into.STEEL, wording("steel", "Stahl", "acier"),
            Into.CAST_IRON, wording("cast iron", "Gusseisen", "fonte"),
            Into.ALUMINIUM, wording("aluminium", "Aluminium", "aluminium"));

    private SafetyPage() {}

    private static Wording wording(String english, String german, String french) {
        return new Wording(Map.of(Wording.ENGLISH, english, "de", german, "fr", french));
    }

    private static TableSpec<BoltedJoint> spec(KitFixings fixings, String language) {
        TableSpec<BoltedJoint> bolts = JointsPage.bolts(
                TableSpec.<BoltedJoint>named("signed-joints")
                        .text("joint", "Joint", 28, joint -> told(joint, fixings, language)),
                language);
        return JointsPage.inStages(bolts, fixings, language)
                .text("table", "Table", 5, joint -> JointsPage.ofTorque(joint, of -> JointsPage.mark(of, fixings)))
                .decimal("preload", "Preload", "kN", 1, joint -> kilonewton(joint.preloadNewton()))
                .decimal("least-preload", "Min. preload", "kN", 1, joint -> kilonewton(joint.leastPreloadNewton()))
                .decimal("clamp", "Clamped", "mm", 0, joint -> ofFacts(joint, JointFacts::clampMm))
                .said(
                        "thread-in",
                        "Thread in",
                        Column.USUAL_WIDEST,
                        joint -> ofFacts(joint, facts -> facts.into() == null ? null : INTO.get(facts.into())))
                .box(Column.tick("torqued", "Torqued"))
                .box(Column.blank("tool", "Tool number"))
                .box(Column.signature("signed", "Signature, date"))
                .besideThePaper()
                .text("torque-table", "Torque table", 30, joint -> JointsPage.ofTorque(joint, BoltedJoint::torqueFrom));
    }

    /** With what is bolted where another joint to sign for is called the same: nobody signs for the wrong one. */
    static String told(BoltedJoint joint, KitFixings fixings, String language) {
        boolean several = fixings.joints().stream()
                        .filter(other -> other.safety() && other.says().equals(joint.says()))
                        .count()
                > 1;
        return several ? JointsPage.what(joint, language) : joint.name().in(language);
    }

    static PageBuilder compose(KitFixings fixings, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Signed joints").landscape().footer(footer);
        page.title("Joints to sign for")
                .add(spec(fixings, workshop.language())
                        .of(fixings.joints().stream()
                                .filter(BoltedJoint::safety)
                                .toList()))
                .note(PRELOAD + " The letters under 'Table' stand on the page 'Joints'.");
        CautionNotes.always(page, "signed-joints", workshop, workshop.language());
        return page.signatures("Checked by a second person");
    }

    static @Nullable BigDecimal kilonewton(Optional<BigDecimal> newton) {
        return newton.map(each -> each.movePointLeft(KILO)).orElse(null);
    }

    private static <T> @Nullable T ofFacts(BoltedJoint joint, Function<JointFacts, @Nullable T> figure) {
        return joint.facts() == null ? null : figure.apply(joint.facts());
    }
}

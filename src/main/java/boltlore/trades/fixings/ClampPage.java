package boltlore.trades.fixings;

import boltlore.catalogue.JointFacts;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.fixings.FixingsMaker.KitFixings;
import java.math.BigDecimal;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What joints clamp with, against the load across them and what they clamp bears. */
final class ClampPage {

    private static final int KILO = 3;

    private static final String FORMULAS = "Slip safety: least clamp load of all bolts × friction × interfaces / load"
            + " across. Pressure: preload / ring under the head. After VDI 2230. Where 'first estimate' stands, the"
            + " figure is for the engineer's judgement, and no proof.";

    private static final TableSpec<ClampedJoint> CLAMPED = TableSpec.<ClampedJoint>named("clamped-joints")
            .said("joint", "Joint", 30, joint -> joint.first().name())
            .decimal("clamp", "Least clamp load", "kN", 1, joint -> SafetyPage.kilonewton(joint.leastClampNewton()))
            .decimal(
                    "load",
                    "Load across",
                    "kN",
                    1,
                    joint -> ofSlip(joint, slip -> slip.transverseNewton().movePointLeft(KILO)))
            .decimal("friction", "Friction", "", 2, joint -> ofSlip(joint, JointFacts.Slip::friction))
            .quantity(
                    "interfaces",
                    "Interfaces",
                    "",
                    joint -> ofSlip(joint, slip -> BigDecimal.valueOf(slip.interfaces())))
            .decimal("safety", "Slip safety", "", 2, joint -> joint.slipSafety().orElse(null))
            .decimal("leastSafety", "At least", "", 2, joint -> ofSlip(joint, JointFacts.Slip::leastSafety))
            .text("material", "Clamped", 20, joint -> ofBearing(joint, JointFacts.Bearing::material))
            .decimal(
                    "pressure",
                    "Pressure",
                    "MPa",
                    0,
                    joint -> joint.pressureMpa().orElse(null))
            .decimal("limit", "At most", "MPa", 0, joint -> ofBearing(joint, JointFacts.Bearing::limitMpa))
            .text("from", "From", 44, ClampPage::from);

    private ClampPage() {}

    static PageBuilder compose(KitFixings fixings, String footer) {
        PageBuilder page = Page.named("Clamp loads").landscape().footer(footer);
        return page.title("Clamp loads, slip and bearing pressure")
                .add(CLAMPED.of(fixings.clamped()))
                .note(FORMULAS);
    }

    private static <T> @Nullable T ofSlip(ClampedJoint joint, Function<JointFacts.Slip, T> figure) {
        return joint.facts().slip() == null ? null : figure.apply(joint.facts().slip());
    }

    private static <T> @Nullable T ofBearing(ClampedJoint joint, Function<JointFacts.Bearing, T> figure) {
        return joint.facts().bearing() == null
                ? null
                : figure.apply(joint.facts().bearing());
    }

    private static String from(ClampedJoint joint) {
        return Stream.of(
                        ofSlip(joint, slip -> said(slip.source(), slip.estimate())),
                        ofBearing(joint, bearing -> said(bearing.source(), bearing.estimate())))
                .filter(text -> text != null)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String said(String source, boolean estimate) {
        return estimate ? source + " (first estimate)" : source;
    }
}

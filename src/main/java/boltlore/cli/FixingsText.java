package boltlore.cli;

import boltlore.catalogue.Fixing;
import boltlore.measure.Digits;
import boltlore.trades.fixings.BoltedJoint;
import boltlore.trades.fixings.KitFixings;
import boltlore.trades.fixings.sheets.JointWords;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/** The fixings of one order for the terminal. */
final class FixingsText {

    private FixingsText() {}

    static void print(Screen screen, KitFixings fixings) {
        screen.heading(fixings.bill().order().name() + ", "
                + fixings.bill().resolved().choices().family().says().english());
        fixings.joints().forEach(joint -> joint(screen, joint));
        screen.wrapped(2, "Torque tables: " + tables(fixings) + ".");
        fixings.remarks().forEach(remark -> screen.wrapped(2, remark.verdict().says() + ": " + remark.says()));
        long unsure = fixings.bags().stream().filter(bag -> !bag.sure()).count();
        screen.wrapped(
                2,
                fixings.joints().size() + " joints; " + fixings.bags().size() + " counts by weight, " + unsure
                        + " of them only once ten of the batch are weighed.");
    }

    private static void joint(Screen screen, BoltedJoint joint) {
        screen.text(String.format(
                Locale.ROOT,
                "  %-40s %-24s %-24s %s%n",
                joint.says(),
                Digits.plain(joint.quantity()) + " × " + JointWords.bolt(joint.fixing()),
                torque(joint.fixing()),
                joint.safety() ? "sign for" : ""));
    }

    private static String torque(Fixing fixing) {
        return fixing.torqueNm() == null || fixing.friction() == null
                ? "no torque"
                : Digits.plain(fixing.torqueNm()) + " Nm, friction "
                        + fixing.friction().toPlainString();
    }

    /** A torque never stands without the table that it is from. */
    private static String tables(KitFixings fixings) {
        return fixings.joints().stream()
                .map(joint -> joint.fixing().torqueTable())
                .filter(Objects::nonNull)
                .distinct()
                .collect(Collectors.joining("; "));
    }
}

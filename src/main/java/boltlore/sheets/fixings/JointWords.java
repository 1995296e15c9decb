package boltlore.sheets.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.Workshop;
import boltlore.fixings.Accompanying;
import boltlore.fixings.BoltedJoint;
import java.math.BigDecimal;
import java.util.stream.Collectors;

/** A joint in a few words. */
public final class JointWords {

    private JointWords() {}

    /** 'M8 × 25, 8.8'. */
    public static String bolt(Fixing fixing) {
        return size(fixing) + ", " + propertyClass(fixing);
    }

    private static String size(Fixing fixing) {
        BigDecimal length = fixing.lengthMm();
        return fixing.thread() + (length == null ? "" : " × " + plain(length));
    }

    private static String propertyClass(Fixing fixing) {
        return fixing.propertyClass() == null ? "class unknown" : fixing.propertyClass();
    }

    /** '4 Flat washer M8; 4 Self-locking nut M8'. */
    public static String with(BoltedJoint joint) {
        return joint.with().stream().map(JointWords::accompanying).collect(Collectors.joining("; "));
    }

    private static String accompanying(Accompanying each) {
        return plain(each.quantity()) + " × " + each.part().name().english();
    }

    static String stage(Workshop workshop, String stage) {
        return workshop.stages().stream()
                .filter(each -> each.name().equals(stage))
                .map(each -> each.says().english())
                .findFirst()
                .orElse(stage);
    }

    public static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.setScale(Math.max(0, stripped.scale())).toPlainString();
    }
}

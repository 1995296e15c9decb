package boltlore.trades.fixings.sheets;

import boltlore.catalogue.Fixing;
import boltlore.measure.Digits;
import boltlore.trades.fixings.Accompanying;
import boltlore.trades.fixings.BoltedJoint;
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
        return fixing.thread() + (length == null ? "" : " × " + Digits.plain(length));
    }

    private static String propertyClass(Fixing fixing) {
        return fixing.propertyClass() == null ? "class unknown" : fixing.propertyClass();
    }

    /** '4 Flat washer M8; 4 Self-locking nut M8'. */
    public static String with(BoltedJoint joint) {
        return joint.with().stream().map(JointWords::accompanying).collect(Collectors.joining("; "));
    }

    private static String accompanying(Accompanying each) {
        return Digits.plain(each.quantity()) + " × " + each.part().name().english();
    }
}

package boltlore.catalogue;

import boltlore.measure.PositionName;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the bolted joint at a position, or of a joint that positions share.
 *
 * @param position null for a shared joint
 * @param joint name of the shared joint, or empty
 * @param safety whether it holds drive, battery, steering, brakes or people, so that each bolt is signed for
 * @param clampMm what lies between head and thread, washers included
 * @param into what the thread holds in
 * @param depthMm depth of a tapped hole's thread
 */
public record JointFacts(
        @Nullable PositionName position,
        String joint,
        boolean safety,
        @Nullable BigDecimal clampMm,
        @Nullable Into into,
        @Nullable BigDecimal depthMm) {

    /** What a bolt's thread holds in. */
    public enum Into {
        NUT("nut"),
        STEEL("steel"),
        CAST_IRON("cast-iron"),
        ALUMINIUM("aluminium");

        private final String written;

        Into(String written) {
            this.written = written;
        }

        public String written() {
            return written;
        }
    }
}

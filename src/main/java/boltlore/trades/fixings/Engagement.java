package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.JointFacts.Into;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much of a bolt's thread holds in what it goes into. The multiples and the threads that stand proud of a nut are
 * common practice, no source; a self-locking nut is about as high as its thread is wide (from memory).
 *
 * @param heldMm what is left of the bolt behind all that it clamps
 * @param leastMm what it takes
 * @param depthMm of the tapped thread, or null where it is open behind or not known
 */
public record Engagement(
        Into into,
        BigDecimal heldMm,
        BigDecimal leastMm,
        @Nullable BigDecimal depthMm) {

    /** Threads that stand proud of a nut. */
    private static final BigDecimal PROUD = BigDecimal.valueOf(2);

    /** From one nominal length to the next in mm, 5 up to 70 and 10 above that: ISO 888, from memory. */
    private static final BigDecimal LENGTH_STEP = BigDecimal.TEN;

    /** Least engagement in diameters, the lower end of what is usual. */
    private static final BigDecimal IN_STEEL = BigDecimal.ONE;

    private static final BigDecimal IN_CAST_IRON = new BigDecimal("1.25");
    private static final BigDecimal IN_ALUMINIUM = new BigDecimal("1.5");

    /** Of a bolt whose length and thread are known, in a joint that says what is clamped. */
    public static Optional<Engagement> of(Fixing bolt, @Nullable JointFacts facts) {
        BigDecimal length = bolt.lengthMm();
        BigDecimal clamp = facts == null ? null : facts.clampMm();
        if (facts == null || clamp == null || length == null) {
            return Optional.empty();
        }
        Into into = facts.into() == null ? Into.NUT : facts.into();
        boolean open = into == Into.NUT || into == Into.RIVET_NUT;
        return ScrewThread.of(bolt.thread())
                .map(thread -> new Engagement(
                        into, length.subtract(clamp), least(into, thread), open ? null : facts.depthMm()));
    }

    private static BigDecimal least(Into into, ScrewThread thread) {
        BigDecimal multiple = thread.diameterMm().multiply(leastDiameters(into));
        return into == Into.NUT ? multiple.add(PROUD.multiply(thread.pitchMm())) : multiple;
    }

    /** How many diameters the thread is engaged at least. */
    static BigDecimal leastDiameters(Into into) {
        return switch (into) {
            case NUT, RIVET_NUT, STEEL -> IN_STEEL;
            case CAST_IRON -> IN_CAST_IRON;
            case ALUMINIUM -> IN_ALUMINIUM;
        };
    }

    /** Whether it sticks out of its nut by more than the next longer bolt would. */
    public boolean isLong() {
        return into == Into.NUT && heldMm.compareTo(mostMm()) > 0;
    }

    /** What it takes, and a step to the next longer bolt. */
    public BigDecimal mostMm() {
        return leastMm.add(LENGTH_STEP);
    }

    public boolean isShort() {
        return heldMm.compareTo(leastMm) < 0;
    }

    public boolean bottoms() {
        return depthMm != null && heldMm.compareTo(depthMm) > 0;
    }
}

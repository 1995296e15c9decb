package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One size of bolt at one joint.
 *
 * @param name of the position, with what shares the joint
 * @param subject stable name: of the shared joint, or else of the position
 * @param position that the bolts go back to, which gives stage and bag
 * @param held what the bolts hold, or empty where a line brings them for itself
 * @param because why so many, in the catalogue's words, or empty
 * @param with nuts and washers that come with them
 * @param facts null where nothing is known of the joint
 */
public record BoltedJoint(
        Wording name,
        String subject,
        Position position,
        String held,
        String because,
        Part bolt,
        BigDecimal quantity,
        List<Accompanying> with,
        @Nullable JointFacts facts) {

    /** So many of a nut or washer that come with a joint's bolts. */
    public record Accompanying(Part part, BigDecimal quantity) {}

    public String says() {
        return name.english();
    }

    /** Thread, class and torque of the bolt. */
    public Fixing fixing() {
        return Objects.requireNonNull(bolt.fixing(), "a bolt has a thread");
    }

    /** Preload in N at the bolt's torque and friction; empty where one of them, or the thread, is not known. */
    public Optional<BigDecimal> preloadNewton() {
        BigDecimal torqueNm = fixing().torqueNm();
        return torqueNm == null
                ? Optional.empty()
                : Tightening.of(fixing()).flatMap(tightening -> tightening.preloadNewton(torqueNm));
    }

    /** Whether each bolt is torqued, ticked and signed for. */
    public boolean safety() {
        return facts != null && facts.safety();
    }
}

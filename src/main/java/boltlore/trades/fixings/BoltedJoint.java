package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.ThreadName;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
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
        Wording held,
        String because,
        Part bolt,
        BigDecimal quantity,
        List<Accompanying> with,
        @Nullable JointFacts facts) {

    private static final Wording BY_THE_NUT = new Wording(Map.of(
            "en", "by the self-locking nut, new each time",
            "de", "durch die selbstsichernde Mutter, jedes Mal neu",
            "fr", "par l'écrou autofreiné, neuf à chaque fois"));

    /** So many of a nut or washer that come with a joint's bolts. */
    public record Accompanying(Part part, BigDecimal quantity) {}

    public String says() {
        return name.english();
    }

    /** Thread, class and torque of the bolt. */
    public Fixing fixing() {
        return Objects.requireNonNull(bolt.fixing(), "a bolt has a thread");
    }

    /** Whether thread, length and class do not say what is taken from the bag: a set, or a bolt that has its washer on it. */
    boolean calledByName() {
        return fixing().washer() == Fixing.Washer.FITTED;
    }

    /** What this joint's drawing or maker asks for; empty where the bolt's table holds. */
    public Optional<JointFacts.OwnTorque> ownTorque() {
        return Optional.ofNullable(facts)
                .map(JointFacts::torque)
                .filter(own -> own.thread().isEmpty() || ThreadName.mate(fixing().thread(), own.thread()));
    }

    /** The rounds in which it is tightened; empty where it is in one go. */
    public Optional<JointFacts.Stages> stages() {
        return Optional.ofNullable(facts).map(JointFacts::stages);
    }

    /** Whether an angle ends the tightening, so that no torque tells how far the bolt is stretched. */
    public boolean byAngle() {
        return stages().filter(JointFacts.Stages::byAngle).isPresent();
    }

    /**
     * What each bolt is tightened to in the end, in Nm, a self-locking thread aside; null where nobody says, and where an angle
     * ends it.
     */
    public @Nullable BigDecimal torqueNm() {
        if (byAngle()) {
            return null;
        }
        Optional<BigDecimal> last = stages().map(JointFacts.Stages::lastTorqueNm);
        if (last.isPresent()) {
            return last.get();
        }
        return ownTorque().map(JointFacts.OwnTorque::torqueNm).orElse(fixing().torqueNm());
    }

    /** Where that torque comes from. */
    public @Nullable String torqueFrom() {
        return ownTorque().map(JointFacts.OwnTorque::source).orElse(fixing().torqueTable());
    }

    /** What the self-locking thread takes at most before the joint clamps, in Nm; null where none is. */
    public @Nullable BigDecimal prevailingNm() {
        return Stream.concat(Stream.of(bolt), with.stream().map(Accompanying::part))
                .map(Part::fixing)
                .filter(Objects::nonNull)
                .map(Fixing::prevailing)
                .filter(Objects::nonNull)
                .map(Fixing.Prevailing::torqueNm)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    /** Whether thread lock, a self-locking thread, or what joints.json says keeps it from coming loose. */
    public boolean isSecured() {
        return !securedBy().english().isEmpty();
    }

    /** What keeps it from coming loose, in words; empty where nothing does. */
    public Wording securedBy() {
        if (fixing().threadLock() != null) {
            return fixing().threadLock();
        }
        return prevailingNm() != null ? BY_THE_NUT : otherwiseSecured().orElse(Wording.english(""));
    }

    /** What joints.json says keeps it from coming loose. */
    Optional<Wording> otherwiseSecured() {
        return Optional.ofNullable(facts).map(JointFacts::securedBy);
    }

    /** The highest that the wrench is set to in Nm: the torque, and on top what the self-locking thread takes. */
    public @Nullable BigDecimal wrenchNm() {
        BigDecimal torque = torqueNm();
        BigDecimal prevailing = prevailingNm();
        return torque == null || prevailing == null ? torque : torque.add(prevailing);
    }

    /** Preload in N at the bolt's torque and friction; empty where one of them, or the thread, is not known. */
    public Optional<BigDecimal> preloadNewton() {
        BigDecimal torqueNm = torqueNm();
        return torqueNm == null
                ? Optional.empty()
                : Tightening.of(fixing()).flatMap(tightening -> tightening.preloadNewton(torqueNm));
    }

    /** What is left of the preload where tightening scatters. */
    public Optional<BigDecimal> leastPreloadNewton() {
        BigDecimal factor =
                facts == null || facts.tighteningFactor() == null ? Tightening.WRENCH : facts.tighteningFactor();
        return preloadNewton().map(newton -> Tightening.afterScatter(newton, factor));
    }

    /** Whether each bolt is torqued, ticked and signed for. */
    public boolean safety() {
        return facts != null && facts.safety();
    }
}

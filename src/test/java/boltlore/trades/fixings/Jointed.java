package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.JointFacts.Into;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.findings.Finding;
import boltlore.measure.Wording;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A joint in the making. */
final class Jointed {

    private final Fixing fixing;
    private boolean safety;
    private @Nullable List<BoltedJoint.Accompanying> washers;
    private List<BoltedJoint.Accompanying> with = List.of();
    private String securedBy = "";
    private @Nullable Into into;
    private @Nullable String thread;
    private @Nullable BigDecimal clampMm;
    private @Nullable BigDecimal depthMm;
    private JointFacts.@Nullable OwnTorque own;
    private JointFacts.@Nullable Slip slip;
    private JointFacts.@Nullable Bearing bearing;
    private JointFacts.@Nullable Stages stages;
    private BigDecimal quantity = BigDecimal.ONE;

    private Jointed(Fixing fixing) {
        this.fixing = fixing;
    }

    static Jointed of(Fixing fixing) {
        return new Jointed(fixing);
    }

    /** M8, 8.8, of that length in mm. */
    static Jointed with(String lengthMm) {
        return of(new Fixing(
                "M8", new BigDecimal(lengthMm), "8.8", new BigDecimal("24.6"), "to VDI 2230", new BigDecimal("0.12")));
    }

    private static BoltedJoint.Accompanying washer(String thread, int count) {
        Part washer = PartSketch.bought("WASHER")
                .fixing(new Fixing(thread, null, null, null, null, null, null, null, Fixing.Washer.ITSELF))
                .draw();
        return new BoltedJoint.Accompanying(washer, BigDecimal.valueOf(count));
    }

    /** So many washers for that thread in the place of one for each bolt; none is none at all. */
    Jointed washers(String thread, int count) {
        washers = count == 0 ? List.of() : List.of(washer(thread, count));
        return this;
    }

    Jointed securedBy(String words) {
        securedBy = words;
        return this;
    }

    Jointed safety() {
        safety = true;
        return this;
    }

    Jointed nut(String propertyClass) {
        Part nut = PartSketch.bought("NUT")
                .fixing(new Fixing("M8", null, propertyClass, null, null, null))
                .draw();
        with = List.of(new BoltedJoint.Accompanying(nut, BigDecimal.ONE));
        return this;
    }

    /** Into a tapped hole of that thread, deep enough. */
    Jointed tapped(String written) {
        thread = written;
        return into(Into.STEEL, "10", null);
    }

    /** Into what; where that is a nut, one of class 8 comes with each bolt. */
    Jointed into(Into material, String clamped, @Nullable String depth) {
        if (with.isEmpty() && (material == Into.NUT || material == Into.RIVET_NUT)) {
            nut("8");
        }
        into = material;
        clampMm = new BigDecimal(clamped);
        depthMm = depth == null ? null : new BigDecimal(depth);
        return this;
    }

    Jointed selfLocking(String prevailingNm) {
        Part nut = PartSketch.bought("NUT")
                .fixing(new Fixing(
                        "M8",
                        null,
                        "8",
                        null,
                        null,
                        null,
                        null,
                        new Fixing.Prevailing(new BigDecimal(prevailingNm), "nut table")))
                .draw();
        with = List.of(new BoltedJoint.Accompanying(nut, BigDecimal.ONE));
        return this;
    }

    Jointed own(String thread, String torqueNm) {
        own = new JointFacts.OwnTorque(thread, new BigDecimal(torqueNm), "drawing T-1, issue A");
        return this;
    }

    /** Tightened to these torques in Nm one after the other, then on by these angles in degrees. */
    Jointed stages(List<String> torquesNm, List<String> anglesDegrees, Integer... sequence) {
        stages = new JointFacts.Stages(
                torquesNm.stream().map(BigDecimal::new).toList(),
                anglesDegrees.stream().map(BigDecimal::new).toList(),
                null,
                List.of(sequence));
        return this;
    }

    Jointed bolts(int count) {
        quantity = BigDecimal.valueOf(count);
        return this;
    }

    /** So many bolts, with a load in N across them; it holds 1.8 times that at least. */
    Jointed sheared(int bolts, String newton, String friction, int interfaces, boolean estimate) {
        quantity = BigDecimal.valueOf(bolts);
        slip = new JointFacts.Slip(
                new BigDecimal(newton),
                new BigDecimal(friction),
                interfaces,
                new BigDecimal("1.8"),
                estimate,
                "load sheet");
        return this;
    }

    Jointed bears(String limitMpa, boolean estimate) {
        bearing = new JointFacts.Bearing("S235", new BigDecimal(limitMpa), null, null, estimate, "material table");
        return this;
    }

    List<Finding> findings() {
        BoltedJoint joint = joint();
        return Stream.concat(
                        JointJudge.findings(joint),
                        ClampedJoint.among(List.of(joint)).stream().flatMap(ClampJudge::findings))
                .toList();
    }

    BoltedJoint joint() {
        Position position =
                PositionSketch.at("frame").line("frame", "BOLT", "1").draw();
        Part bolt = PartSketch.bought("BOLT").fixing(fixing).draw();
        JointFacts facts = new JointFacts(
                position.name(),
                "",
                safety,
                clampMm,
                into,
                depthMm,
                thread,
                own,
                null,
                slip,
                bearing,
                stages,
                securedBy.isEmpty() ? null : Wording.english(securedBy));
        List<BoltedJoint.Accompanying> under =
                washers == null ? List.of(washer(fixing.thread(), quantity.intValueExact())) : washers;
        List<BoltedJoint.Accompanying> all =
                Stream.concat(under.stream(), with.stream()).toList();
        return new BoltedJoint(
                Wording.english("Frame"), "frame", position, Wording.english(""), "", bolt, quantity, all, facts);
    }
}

package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Line;
import boltlore.catalogue.Mounting;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.measure.PositionName;
import boltlore.trades.fixings.PropertyClass;
import boltlore.trades.fixings.ScrewThread;
import boltlore.trades.fixings.Tightening;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Figures of joints.json and of a mount's bolts in driving.json, against the bolts that stand there, and the prevailing torque of
 * self-locking nuts against their standard.
 */
final class JointFigures {

    /**
     * Highest prevailing torque at the first tightening in Nm, and least when it is first taken off, of classes up to 8: ISO 2320,
     * from memory.
     */
    private static final Map<String, List<String>> PREVAILING = Map.of(
            "M3", List.of("0.1", "0.43"),
            "M4", List.of("0.12", "0.9"),
            "M5", List.of("0.29", "1.6"),
            "M6", List.of("0.45", "3"),
            "M8", List.of("0.85", "6"),
            "M10", List.of("1.5", "10.5"),
            "M12", List.of("2.3", "15.5"),
            "M14", List.of("3.3", "24"),
            "M16", List.of("4.5", "32"));

    /** Nuts of class 10 and 12 may take a third more: ISO 2320, from memory. */
    private static final BigDecimal STRONGER = new BigDecimal("1.34");

    /** Limiting surface pressure over the yield that a structural steel is named by: 490 / 235 in VDI 2230-1, from memory. */
    private static final BigDecimal OVER_YIELD = new BigDecimal("2.5");

    private static final Pattern STRUCTURAL = Pattern.compile("\\bS(\\d{3})");

    /** The ring under a head or washer, in diameters: hexagon heads press to 1.5, wide washers to 3; common practice, no source. */
    private static final BigDecimal RING_LEAST = new BigDecimal("1.3");

    private static final BigDecimal RING_MOST = new BigDecimal("3.5");

    /** Clearance holes: ISO 273 fine to coarse, and slots; from memory. */
    private static final BigDecimal HOLE_MOST = new BigDecimal("1.4");

    /** What plastic, gaskets and terminals bear of a bolt's own torque at least; common practice, no source. */
    private static final BigDecimal OWN_LEAST = new BigDecimal("0.1");

    /** Taps reach, and drawings ask, this many diameters at most: DIN 76-1 and common practice, from memory. */
    private static final BigDecimal DEEPEST = BigDecimal.valueOf(3);

    private static final BigDecimal AREA_GIVES = new BigDecimal("0.05");

    private final Catalogue catalogue;
    private final Family family;

    private JointFigures(Catalogue catalogue, Family family) {
        this.catalogue = catalogue;
        this.family = family;
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        Stream<Remark> families = catalogue.families().values().stream().flatMap(family -> {
            JointFigures check = new JointFigures(catalogue, family);
            return Stream.concat(
                    family.joints().stream().flatMap(check::ofJoint),
                    family.driving().mounting().mounts().stream().flatMap(check::ofMount));
        });
        return Stream.concat(catalogue.parts().values().stream().flatMap(JointFigures::prevailing), families);
    }

    private static Stream<Remark> prevailing(Part part) {
        Fixing fixing = part.fixing();
        Fixing.Prevailing prevailing = fixing == null ? null : fixing.prevailing();
        List<String> window = fixing == null ? null : PREVAILING.get(fixing.thread());
        if (fixing == null || prevailing == null || window == null) {
            return Stream.empty();
        }
        boolean strong = Objects.requireNonNullElse(fixing.propertyClass(), "").startsWith("1");
        BigDecimal least = new BigDecimal(window.get(0));
        BigDecimal most = new BigDecimal(window.get(1)).multiply(strong ? STRONGER : BigDecimal.ONE);
        return prevailing.torqueNm().compareTo(least) >= 0
                        && prevailing.torqueNm().compareTo(most) <= 0
                ? Stream.empty()
                : Stream.of(new Remark(
                        Said.part(part),
                        Check.JOINT_FIGURE,
                        "a prevailing torque of " + Digits.plain(prevailing.torqueNm()) + " Nm for " + fixing.thread(),
                        Digits.plain(least) + " to " + Digits.upTo(most, 1) + " Nm (ISO 2320)",
                        "Look at the point, and at the nut's data sheet: the wrench is set higher by it"));
    }

    private Stream<Remark> ofJoint(JointFacts facts) {
        PositionName position = facts.position();
        List<Fixing> bolts = position == null ? List.of() : bolts(position);
        JointFacts.Bearing bearing = facts.bearing();
        return Stream.of(
                        unsaid(facts),
                        bearing == null ? Stream.<Remark>of() : limit(facts, bearing),
                        bearing == null
                                ? Stream.<Remark>of()
                                : bolts.stream().flatMap(bolt -> ring(facts, bearing, bolt)),
                        bolts.stream().flatMap(bolt -> torques(facts, bolt)),
                        bolts.stream().flatMap(bolt -> deep(facts, bolt)))
                .flatMap(remarks -> remarks)
                .distinct();
    }

    /** What holds drive, battery, steering, brakes or people is judged by its length, or nothing tells a bolt that is too short. */
    private Stream<Remark> unsaid(JointFacts facts) {
        boolean blind = facts.into() != null
                && facts.into() != JointFacts.Into.NUT
                && facts.into() != JointFacts.Into.RIVET_NUT;
        String missing = facts.clampMm() == null ? "clampMm" : blind && facts.depthMm() == null ? "depthMm" : "";
        return facts.safety() && !missing.isEmpty()
                ? Stream.of(remark(
                        facts,
                        "no '" + missing + "' in a joint that is signed for",
                        "all that lies between head and thread, and how deep a tapped hole is",
                        "Measure it: without it no bolt is told that is too long or too short"))
                : Stream.empty();
    }

    private Stream<Remark> limit(JointFacts facts, JointFacts.Bearing bearing) {
        Matcher named = STRUCTURAL.matcher(bearing.material());
        if (!named.find()) {
            return Stream.empty();
        }
        BigDecimal yield = new BigDecimal(named.group(1));
        BigDecimal most = yield.multiply(OVER_YIELD);
        return bearing.limitMpa().compareTo(yield) >= 0 && bearing.limitMpa().compareTo(most) <= 0
                ? Stream.empty()
                : Stream.of(remark(
                        facts,
                        "'limitMpa' " + Digits.plain(bearing.limitMpa()) + " for " + bearing.material(),
                        Digits.plain(yield) + " MPa, the yield that it is named by (EN 10025), to " + Digits.plain(most)
                                + ", two and a half times that",
                        "Look it up in the table that 'source' names"));
    }

    private Stream<Remark> ring(JointFacts facts, JointFacts.Bearing bearing, Fixing bolt) {
        return ScrewThread.of(bolt.thread()).stream().flatMap(thread -> {
            BigDecimal d = thread.diameterMm();
            boolean ring = bearing.outerMm() == null
                    || within(bearing.outerMm(), d.multiply(RING_LEAST), d.multiply(RING_MOST));
            boolean hole = bearing.holeMm() == null || within(bearing.holeMm(), d, d.multiply(HOLE_MOST));
            return ring && hole
                    ? Stream.<Remark>empty()
                    : Stream.of(remark(
                            facts,
                            "a ring of " + said(bearing.outerMm()) + " mm around a hole of " + said(bearing.holeMm())
                                    + " mm under " + bolt.thread(),
                            "a ring of " + Digits.plain(d.multiply(RING_LEAST)) + " to "
                                    + Digits.plain(d.multiply(RING_MOST)) + " mm and a hole of " + Digits.plain(d)
                                    + " to "
                                    + Digits.plain(d.multiply(HOLE_MOST)) + " mm (ISO 273)",
                            "Correct 'outerMm' or 'holeMm' under 'bearing'"));
        });
    }

    /** The joint's own torque and its first round, against what the bolt itself takes. */
    private Stream<Remark> torques(JointFacts facts, Fixing bolt) {
        BigDecimal computed = Tightening.of(bolt).flatMap(Tightening::torqueNm).orElse(null);
        if (computed == null) {
            return Stream.empty();
        }
        JointFacts.OwnTorque own = facts.torque();
        Stream<BigDecimal> ofBolt =
                own != null && (own.thread().isEmpty() || own.thread().equals(bolt.thread()))
                        ? Stream.of(own.torqueNm())
                        : Stream.of();
        Stream<BigDecimal> rounds = Stream.ofNullable(facts.stages())
                .flatMap(stages -> stages.torquesNm().stream().limit(1));
        BigDecimal least = computed.multiply(OWN_LEAST);
        return Stream.concat(ofBolt, rounds)
                .filter(torque -> !within(torque, least, computed.multiply(Tightening.WRENCH)))
                .map(torque -> remark(
                        facts,
                        Digits.plain(torque) + " Nm for " + bolt.thread(),
                        Digits.upTo(least, 1) + " to " + Digits.upTo(computed, 1)
                                + " Nm: a tenth to all of what the bolt takes",
                        "Look at the point and the unit of the torque, and at its source"));
    }

    private Stream<Remark> deep(JointFacts facts, Fixing bolt) {
        BigDecimal depth = facts.depthMm();
        return ScrewThread.of(bolt.thread()).stream()
                .map(thread -> thread.diameterMm().multiply(DEEPEST))
                .filter(most -> depth != null && depth.compareTo(most) > 0)
                .map(most -> remark(
                        facts,
                        "'depthMm' " + said(depth) + " for " + bolt.thread(),
                        "at most " + Digits.plain(most) + " mm, three diameters, as deep as threads are tapped",
                        "Measure the hole: a bolt that is too long bottoms and clamps nothing"));
    }

    private Stream<Remark> ofMount(Mounting.Mount mount) {
        Mounting.Bolts said = mount.bolts();
        return said == null
                ? Stream.empty()
                : said.at().stream()
                        .flatMap(at -> bolts(at).stream().flatMap(bolt -> unlike(mount, said, at, bolt).stream()))
                        .distinct();
    }

    private Optional<Remark> unlike(Mounting.Mount mount, Mounting.Bolts said, PositionName at, Fixing bolt) {
        ScrewThread thread = ScrewThread.of(bolt.thread()).orElse(null);
        PropertyClass of = PropertyClass.of(bolt.propertyClass()).orElse(null);
        if (thread == null || of == null) {
            return Optional.empty();
        }
        BigDecimal area = thread.stressAreaMm2().round(new MathContext(3));
        BigDecimal tensile = BigDecimal.valueOf(of.strength(thread.diameterMm()).tensile());
        BigDecimal apart = said.stressAreaMm2().subtract(area).abs();
        boolean alike = apart.compareTo(area.multiply(AREA_GIVES)) <= 0
                && said.ultimateMpa().compareTo(tensile) <= 0
                && said.ultimateMpa().multiply(BigDecimal.valueOf(2)).compareTo(tensile) >= 0;
        return alike
                ? Optional.empty()
                : Optional.of(new Remark(
                        "mount " + family.name() + "/" + mount.name(),
                        Check.MOUNT_FIGURE,
                        "'stressAreaMm2' " + Digits.plain(said.stressAreaMm2()) + " and 'ultimateMpa' "
                                + Digits.plain(said.ultimateMpa()),
                        Digits.plain(area) + " mm² and " + tensile + " MPa of " + bolt.thread() + ", class "
                                + bolt.propertyClass() + ", at " + at + " (ISO 898-1)",
                        "Correct 'bolts' of the mount in driving.json, or the bolts of the position"));
    }

    /** Each kind of bolt once that lies at the position, or that its lines and their parts bring along. */
    private List<Fixing> bolts(PositionName position) {
        Map<String, Fixing> bolts = new TreeMap<>();
        family.position(position).stream()
                .flatMap(at -> at.lines().stream())
                .flatMap(this::broughtBy)
                .map(Part::fixing)
                .filter(Objects::nonNull)
                .filter(Fixing::isBolt)
                .forEach(bolt -> bolts.putIfAbsent(bolt.thread() + " " + bolt.propertyClass(), bolt));
        return List.copyOf(bolts.values());
    }

    private Stream<Part> broughtBy(Line line) {
        Part part = catalogue.parts().get(line.part());
        return part == null
                ? Stream.of()
                : Stream.concat(
                        Stream.of(part),
                        Stream.concat(line.needs().stream(), part.needs().stream())
                                .map(Need::part)
                                .map(catalogue.parts()::get)
                                .filter(Objects::nonNull));
    }

    private Remark remark(JointFacts facts, String found, String expected, String advice) {
        String joint =
                facts.position() == null ? facts.joint() : facts.position().text();
        return new Remark("joint " + family.name() + "/" + joint, Check.JOINT_FIGURE, found, expected, advice);
    }

    private static boolean within(BigDecimal figure, BigDecimal least, BigDecimal most) {
        return figure.compareTo(least) >= 0 && figure.compareTo(most) <= 0;
    }

    private static String said(@Nullable BigDecimal mm) {
        return mm == null ? "no" : Digits.plain(mm);
    }
}

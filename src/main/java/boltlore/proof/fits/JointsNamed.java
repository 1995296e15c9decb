package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Driving;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Line;
import boltlore.catalogue.Mounting;
import boltlore.catalogue.Need;
import boltlore.catalogue.Position;
import boltlore.catalogue.ThreadName;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Joints and mounts that nobody names, so that nobody judges or signs for them. What needs a name follows from the rest of the
 * family: what mounts, shafts and quantities of safety speak of, and bolts that something keeps from coming loose.
 */
final class JointsNamed {

    /** Smaller ones hold covers and housings, locked or not, and larger ones what is heavy; common practice, no source. */
    private static final BigDecimal LARGE_ABOVE_MM = BigDecimal.valueOf(8);

    /**
     * Bolts that a line brings, at its own position or at a joint that several share.
     *
     * @param locking whether self-locking nuts come with the line
     */
    private record Bolted(Line line, String joint, Set<PartNumber> bolts, boolean locking) {}

    private final KitView kit;

    private JointsNamed(KitView kit) {
        this.kit = kit;
    }

    static List<FitFinding.Possible> heavy(KitView kit) {
        JointsNamed named = new JointsNamed(kit);
        Set<PositionName> heavy = named.heavy();
        return named.positions()
                .filter(position -> heavy.contains(position.name()))
                .flatMap(position -> named.of(position, true, FitFinding.HEAVY_JOINT_NOT_NAMED))
                .toList();
    }

    static List<FitFinding.Possible> others(KitView kit) {
        JointsNamed named = new JointsNamed(kit);
        Set<PositionName> heavy = named.heavy();
        return named.positions()
                .filter(position -> !heavy.contains(position.name()))
                .flatMap(position -> named.of(position, false, FitFinding.JOINT_NOT_NAMED))
                .toList();
    }

    private Stream<Position> positions() {
        return kit.family().positions().stream();
    }

    /** All that holds drive unit, shafts and battery, as far as the family's files tell, and what the house names. */
    private Set<PositionName> heavy() {
        Driving driving = kit.family().driving();
        Fits fits = kit.family().fits();
        Stream<PositionName> mounts = driving.mounting().mounts().stream()
                .flatMap(mount -> Stream.ofNullable(mount.bolts()))
                .flatMap(bolts -> bolts.at().stream());
        Stream<PositionName> shafts = Stream.concat(
                fits.shafts().stream().map(Fits.Shaft::position),
                fits.boxes().stream().map(Fits.Box::position));
        Stream<PositionName> safe = fits.quantities().stream()
                .filter(Fits.Follows::safety)
                .flatMap(follows -> Stream.concat(follows.of().stream(), follows.from().stream()))
                .flatMap(share -> position(share.counted()));
        return Stream.of(mounts, shafts, safe, driveUnits(driving), signed())
                .flatMap(names -> names)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Stream<PositionName> driveUnits(Driving driving) {
        Set<PartNumber> units =
                driving.driveUnits().stream().map(Driving.DriveUnit::part).collect(Collectors.toSet());
        return positions()
                .filter(position -> position.lines().stream().map(Line::part).anyMatch(units::contains))
                .map(Position::name);
    }

    /** Where a part of a kind stands whose bolts are signed for in every family. */
    private Stream<PositionName> signed() {
        return positions()
                .filter(position -> position.lines().stream()
                        .map(line -> kit.catalogue().part(line.part()))
                        .anyMatch(part -> kit.catalogue().house().kinds().values().stream()
                                .anyMatch(kind -> kind.signed() && kind.covers(part))))
                .map(Position::name);
    }

    private static Stream<PositionName> position(Fits.Counted counted) {
        if (counted instanceof Fits.Pieces at) {
            return Stream.of(at.position());
        }
        return counted instanceof Fits.Holes at ? Stream.of(at.position()) : Stream.empty();
    }

    private Stream<FitFinding.Possible> of(Position position, boolean signed, FitFinding kind) {
        return position.lines().stream()
                .flatMap(this::bolted)
                .filter(bolted ->
                        signed || bolted.bolts().stream().anyMatch(bolt -> isCritical(bolt, bolted.locking())))
                .map(bolted -> unnamed(position, bolted, signed, kind))
                .filter(possible -> !possible.when().equals(Optional.of(Any.NEVER)));
    }

    private Stream<Bolted> bolted(Line line) {
        Map<String, Set<PartNumber>> byJoint = new LinkedHashMap<>();
        if (isBolt(line.part())) {
            byJoint.put("", new TreeSet<>(Set.of(line.part())));
        }
        Stream.concat(line.needs().stream(), needsOf(line.part()))
                .filter(need -> isBolt(need.part()))
                .forEach(need -> byJoint.computeIfAbsent(joint(need), joint -> new TreeSet<>())
                        .add(need.part()));
        boolean locking =
                Stream.concat(line.needs().stream(), needsOf(line.part())).anyMatch(this::isLocking);
        return byJoint.entrySet().stream().map(entry -> new Bolted(line, entry.getKey(), entry.getValue(), locking));
    }

    /** In every family, and in this one. */
    private Stream<Need> needsOf(PartNumber number) {
        return Stream.concat(
                kit.catalogue().part(number).needs().stream(),
                kit.family().companions().stream()
                        .filter(companion -> companion.part().equals(number))
                        .flatMap(companion -> companion.needs().stream()));
    }

    private static String joint(Need need) {
        return need.ask() instanceof Need.AtJoint at ? at.joint() : "";
    }

    private boolean isBolt(PartNumber part) {
        Fixing fixing = kit.catalogue().part(part).fixing();
        return fixing != null && fixing.isBolt();
    }

    private boolean isLocking(Need need) {
        Fixing nut = kit.catalogue().part(need.part()).fixing();
        return nut != null && nut.prevailing() != null;
    }

    /** It is larger than M8, or an M8 that something keeps from coming loose. */
    private boolean isCritical(PartNumber number, boolean locking) {
        Fixing fixing = kit.catalogue().part(number).fixing();
        if (fixing == null) {
            return false;
        }
        boolean locked =
                locking || fixing.threadLock() != null || needsOf(number).anyMatch(this::isLocking);
        return ThreadName.of(fixing.thread())
                .map(thread -> thread.diameterMm().compareTo(LARGE_ABOVE_MM))
                .filter(compared -> compared > 0 || (compared == 0 && locked))
                .isPresent();
    }

    private FitFinding.Possible unnamed(Position position, Bolted bolted, boolean signed, FitFinding kind) {
        boolean named = kit.family().joints().stream()
                .anyMatch(facts -> isOf(facts, position, bolted.joint()) && (!signed || facts.safety()));
        return kind.when(
                named ? Any.NEVER : kit.kit().in(bolted.line().name()),
                bolted.line().name().text(),
                bolted.joint(),
                List.of(bolted.line().name()),
                "position",
                Broken.said(kit, position.name()),
                "bolts",
                bolted.bolts().stream().map(PartNumber::text).toList());
    }

    private static boolean isOf(JointFacts facts, Position position, String joint) {
        return joint.isEmpty()
                ? position.name().equals(facts.position())
                : facts.joint().equals(joint);
    }

    /** Drive units, boxes and what lies in them, of a family that judges mounts at all; where it has none, the trade says that nothing was judged. */
    static List<FitFinding.Possible> unmounted(KitView kit) {
        JointsNamed named = new JointsNamed(kit);
        Driving driving = kit.family().driving();
        List<Mounting.Mount> mounts = driving.mounting().mounts();
        Stream<PositionName> boxes =
                kit.family().fits().boxes().stream().flatMap(box -> Stream.of(box.position(), box.holds()));
        List<FitFinding.Possible> all = new ArrayList<>();
        Stream.concat(named.driveUnits(driving), boxes)
                .distinct()
                .filter(position -> !mounts.isEmpty())
                .forEach(position -> kit.kit()
                        .position(position)
                        .lines()
                        .forEach(line -> all.add(named.unmounted(position, line, mounts))));
        return all;
    }

    private FitFinding.Possible unmounted(PositionName position, Line line, List<Mounting.Mount> mounts) {
        List<Condition> hung = mounts.stream()
                .filter(mount -> hangsOn(mount, position))
                .map(mount -> kit.kit().unfolded(mount.when()))
                .toList();
        return FitFinding.HANGS_ON_NO_MOUNT.when(
                All.of(kit.kit().in(line.name()), Any.but(Any.of(hung))),
                line.name().text(),
                "",
                List.of(line.name()),
                "part",
                BoxContents.named(kit, line.part()));
    }

    private boolean hangsOn(Mounting.Mount mount, PositionName position) {
        PositionName under = kit.kit().position(position).under();
        return mount.carries().contains(position) || (under != null && hangsOn(mount, under));
    }
}

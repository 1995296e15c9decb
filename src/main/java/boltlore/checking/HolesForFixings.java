package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Hole;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.ThreadName;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Bolts that a line brings fit through, or into, the holes of its part, and there is a bolt for each hole of their size. */
final class HolesForFixings {

    private final Family family;
    private final FamilyPlan plan;

    HolesForFixings(Catalogue catalogue, Family family) {
        this.family = family;
        this.plan = new FamilyPlan(catalogue, family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            HolesForFixings check = new HolesForFixings(catalogue, family);
            return Stream.concat(
                    family.lines().flatMap(check::of),
                    family.positions().stream().flatMap(check::uncounted));
        });
    }

    /**
     * Bolts that are signed for follow from the holes that they go through; of a part without holes nothing tells that one is
     * missing, unless fits.json says what their number follows from.
     */
    private Stream<Remark> uncounted(Position position) {
        boolean signed = family.joints().stream()
                .anyMatch(facts -> facts.safety() && position.name().equals(facts.position()));
        return !signed
                ? Stream.empty()
                : position.lines().stream()
                        .filter(line -> plan.part(line.part()).holes().isEmpty())
                        .flatMap(line -> Stream.concat(line.needs().stream(), plan.needsOf(line.part()).stream())
                                .filter(need -> bolt(need).isPresent() && !follows(need.part()))
                                .map(need -> new Remark(
                                        Said.line(family, line),
                                        Check.HOLE_UNKNOWN,
                                        need.part() + " for " + line.part() + ", of which no holes are listed",
                                        "the holes that these bolts go through, for they are signed for",
                                        "List them under 'holes' of the part, or say in fits.json what their number"
                                                + " follows from")));
    }

    private boolean follows(PartNumber bolt) {
        return family.fits().quantities().stream()
                .flatMap(follows -> follows.of().stream())
                .anyMatch(share -> share.counted() instanceof Fits.PartsInKit of
                        && of.part().equals(bolt));
    }

    private Stream<Remark> of(Line line) {
        Part part = plan.part(line.part());
        if (part.holes().isEmpty()) {
            return Stream.empty();
        }
        SortedMap<String, List<Need>> byThread = Stream.concat(
                        line.needs().stream(), plan.needsOf(part.number()).stream())
                .filter(need -> bolt(need).isPresent())
                .collect(Collectors.groupingBy(
                        need -> bolt(need).orElseThrow().thread(), TreeMap::new, Collectors.toList()));
        return byThread.entrySet().stream()
                .flatMap(bolts -> MetricHoles.forThread(bolts.getKey()).stream()
                        .flatMap(holes -> of(line, part, bolts.getKey(), holes, bolts.getValue()).stream()));
    }

    /** A nut has a thread but no length: it sits on a bolt that has its hole already. */
    private Optional<Fixing> bolt(Need need) {
        return Optional.ofNullable(plan.part(need.part()).fixing()).filter(Fixing::isBolt);
    }

    private Optional<Remark> of(Line line, Part part, String thread, MetricHoles wanted, List<Need> needs) {
        int bolts = bolts(needs, line);
        int fitting = count(part, wanted::suit);
        if (fitting == 0) {
            return Optional.of(new Remark(
                    Said.line(family, line),
                    Check.HOLE_SIZE,
                    thread + " for " + part.number() + ", which has holes of " + sizes(part),
                    "a hole of " + wanted.say(),
                    "Check the fixing, or the drawing's holes"));
        }
        if (fitting >= bolts) {
            return unused(line, part, thread, wanted, needs);
        }
        return Optional.of(new Remark(
                Said.line(family, line),
                Check.HOLE_COUNT,
                bolts + " of " + thread + " for " + part.number(),
                "at most one for each of its " + fitting + " holes of that size",
                "Check the count of the fixings and of the holes"));
    }

    /**
     * However many of its bolts come at once, and whatever stands on it. What is screwed into a thread of the bracket goes
     * through none of its clear holes.
     */
    private Optional<Remark> unused(Line line, Part part, String thread, MetricHoles wanted, List<Need> needs) {
        int own = needs.stream()
                .map(need -> forOne(need, line))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .setScale(0, RoundingMode.CEILING)
                .intValue();
        int clear = count(part, wanted::clear);
        int all = count(part, wanted::suit);
        int through = most(carried(line), thread, this::goesThrough);
        int carried = most(carried(line), thread, (position, need) -> true);
        return clear > own && !through(line, thread).contains(clear - own)
                ? unused(line, thread, clear, "clear holes", own, through, false)
                : unused(line, thread, all, "holes", own, carried, all <= own + carried);
    }

    private Optional<Remark> unused(
            Line line, String thread, int holes, String called, int own, int carried, boolean filled) {
        return filled
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.line(family, line),
                        Check.HOLE_UNUSED,
                        holes + " " + called + " of " + line.part() + " for " + thread + ", " + own
                                + " such bolts of its own"
                                + (carried == 0 ? "" : " and " + carried + " of what it carries"),
                        "a bolt for each of them, here or in what the bracket carries",
                        "Check the count of the fixings and of the holes"));
    }

    private static int count(Part part, Predicate<BigDecimal> diameter) {
        return part.holes().stream()
                .filter(hole -> diameter.test(hole.diameterMm()))
                .mapToInt(Hole::count)
                .sum();
    }

    /** How many bolts of what a line carries may go through it: all of one device or none, fewer where others carry it too. */
    private Set<Integer> through(Line line, String thread) {
        Set<Integer> sums = Set.of(0);
        for (Position position : carried(line).toList()) {
            Set<Integer> more = position.lines().stream()
                    .map(each -> bolts(each, thread, need -> goesThrough(position, need)))
                    .flatMap(bolts -> alone(position)
                            ? Stream.of(0, bolts)
                            : IntStream.rangeClosed(0, bolts).boxed())
                    .collect(Collectors.toSet());
            sums = sums.stream()
                    .flatMap(sum -> more.stream().map(bolts -> sum + bolts))
                    .collect(Collectors.toSet());
        }
        return sums;
    }

    /** Threads of the bolts with which what stands there goes through what carries it. */
    Set<String> threads(Position position) {
        return position.lines().stream()
                .flatMap(line -> Stream.concat(line.needs().stream(), plan.needsOf(line.part()).stream()))
                .filter(need -> goesThrough(position, need))
                .flatMap(need -> bolt(need).stream())
                .map(Fixing::thread)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Clear holes of so many brackets as the line brings that their own bolts leave; empty where its holes are not known. */
    Optional<Integer> spare(Line line, String thread) {
        Part part = plan.part(line.part());
        int own = bolts(
                Stream.concat(line.needs().stream(), plan.needsOf(part.number()).stream())
                        .filter(need -> bolt(need)
                                .filter(fixing -> ThreadName.mate(fixing.thread(), thread))
                                .isPresent())
                        .toList(),
                line);
        return part.holes().isEmpty()
                ? Optional.empty()
                : MetricHoles.forThread(thread)
                        .map(wanted -> (count(part, wanted::clear) - own)
                                * line.quantity()
                                        .setScale(0, RoundingMode.CEILING)
                                        .intValue());
    }

    /** Bolts of that thread with which what stands there may go through what carries it, by its lines. */
    Set<Integer> throughBolts(Position position, String thread) {
        return position.lines().stream()
                .map(line -> bolts(line, thread, need -> goesThrough(position, need)))
                .collect(Collectors.toSet());
    }

    private boolean alone(Position carried) {
        List<Position> carriers = family.positions().stream()
                .filter(position -> position.lines().stream()
                        .anyMatch(line -> line.carries().contains(carried.name())))
                .toList();
        return carriers.size() == 1
                && carriers.get(0).lines().stream()
                        .allMatch(line -> line.quantity().compareTo(BigDecimal.ONE) <= 0);
    }

    /** As far as joints.json tells: a hole whose thread has a depth is tapped, in what the bolt holds onto. */
    private boolean goesThrough(Position position, Need need) {
        return family.joints().stream()
                .filter(facts -> need.ask() instanceof Need.AtJoint at
                        ? facts.joint().equals(at.joint())
                        : position.name().equals(facts.position()))
                .allMatch(facts -> facts.depthMm() == null);
    }

    private Stream<Position> carried(Line line) {
        return line.carries().stream().flatMap(name -> family.position(name).stream());
    }

    /** The most bolts of a thread that come with what stands at those positions, whichever line that is. */
    private int most(Stream<Position> positions, String thread, BiPredicate<Position, Need> counted) {
        return positions
                .mapToInt(position -> position.lines().stream()
                        .mapToInt(line -> bolts(line, thread, need -> counted.test(position, need)))
                        .max()
                        .orElse(0))
                .sum();
    }

    private int bolts(Line line, String thread, Predicate<Need> counted) {
        List<Need> needs = Stream.concat(line.needs().stream(), plan.needsOf(line.part()).stream())
                .filter(counted)
                .filter(need -> bolt(need)
                        .filter(fixing -> ThreadName.mate(fixing.thread(), thread))
                        .isPresent())
                .toList();
        return bolts(needs, line)
                * line.quantity().setScale(0, RoundingMode.CEILING).intValue();
    }

    /** For one part: what it always takes and the most of what it takes under a condition, which may exclude each other. */
    private static int bolts(List<Need> needs, Line line) {
        BigDecimal always = BigDecimal.ZERO;
        BigDecimal sometimes = BigDecimal.ZERO;
        for (Need need : needs) {
            BigDecimal asked = forOne(need, line);
            if (need.when().isAlways()) {
                always = always.add(asked);
            } else {
                sometimes = sometimes.max(asked);
            }
        }
        return always.add(sometimes).setScale(0, RoundingMode.CEILING).intValue();
    }

    private static BigDecimal forOne(Need need, Line line) {
        if (need.ask() instanceof Need.Each each) {
            return each.quantity();
        }
        BigDecimal parts = line.quantity().max(BigDecimal.ONE);
        return ((Need.AtJoint) need.ask()).atLeast().divide(parts, 0, RoundingMode.CEILING);
    }

    private static String sizes(Part part) {
        return part.holes().stream()
                .map(Hole::diameterMm)
                .distinct()
                .sorted()
                .map(Digits::plain)
                .collect(Collectors.joining(", ", "", " mm"));
    }
}

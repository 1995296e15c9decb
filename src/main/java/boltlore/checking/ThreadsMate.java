package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.JointFacts.Into;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.ThreadName;
import boltlore.measure.Digits;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.fixings.Engagement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Each bolt that a line brings mates with what it goes into: a nut or rivet nut that comes with it, or the tapped hole of
 * which joints.json says the thread; and enough of its thread holds there.
 */
final class ThreadsMate {

    /** Fixings of one kind that come with a line. */
    private record Brought(Part part, Fixing fixing, BigDecimal many, String joint) {

        boolean isBolt() {
            return fixing.isBolt();
        }
    }

    private final Family family;
    private final FamilyPlan plan;

    private ThreadsMate(Catalogue catalogue, Family family) {
        this.family = family;
        this.plan = new FamilyPlan(catalogue, family);
    }

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(family -> {
            ThreadsMate check = new ThreadsMate(catalogue, family);
            return family.positions().stream().flatMap(check::of);
        });
    }

    private Stream<Remark> of(Position position) {
        return position.lines().stream().flatMap(line -> {
            List<Brought> all = brought(line);
            List<Brought> nuts = new ArrayList<>(
                    all.stream().filter(each -> each.fixing().isNut()).toList());
            all.stream()
                    .filter(Brought::isBolt)
                    .forEach(bolt -> needed(plan.needsOf(bolt.part().number()), bolt.many())
                            .forEach(nuts::add));
            List<Brought> bolts = all.stream().filter(Brought::isBolt).toList();
            return Stream.concat(
                    bolts.stream().flatMap(bolt -> of(position, line, bolt, nuts)),
                    nuts.stream()
                            .filter(nut -> bolts.stream().noneMatch(bolt -> mate(bolt, nut)))
                            .map(nut -> alone(line, nut)));
        });
    }

    private List<Brought> brought(Line line) {
        List<Brought> all = new ArrayList<>();
        Part part = plan.part(line.part());
        if (part.fixing() != null) {
            all.add(new Brought(part, part.fixing(), line.quantity(), ""));
        } else {
            needed(line.needs(), line.quantity()).forEach(all::add);
            needed(plan.needsOf(part.number()), line.quantity()).forEach(all::add);
        }
        return all;
    }

    private Stream<Brought> needed(List<Need> needs, BigDecimal askers) {
        return needs.stream().flatMap(need -> {
            Part part = plan.part(need.part());
            Fixing fixing = part.fixing();
            return fixing == null || fixing.isWasher()
                    ? Stream.empty()
                    : Stream.of(
                            need.ask() instanceof Need.Each each
                                    ? new Brought(part, fixing, each.quantity().multiply(askers), "")
                                    : new Brought(
                                            part,
                                            fixing,
                                            ((Need.AtJoint) need.ask()).atLeast(),
                                            ((Need.AtJoint) need.ask()).joint()));
        });
    }

    private static boolean mate(Brought bolt, Brought nut) {
        return ThreadName.mate(bolt.fixing().thread(), nut.fixing().thread());
    }

    private Stream<Remark> of(Position position, Line line, Brought bolt, List<Brought> nuts) {
        JointFacts facts = facts(position, bolt.joint());
        Into into = facts == null ? null : facts.into();
        Stream<Remark> thread = into == Into.NUT || into == Into.RIVET_NUT
                ? nuts(line, bolt, nuts, into).stream()
                : tapped(line, bolt, facts).stream();
        return Stream.concat(thread, engaged(line, bolt, facts).stream());
    }

    private @Nullable JointFacts facts(Position position, String joint) {
        return family.joints().stream()
                .filter(facts -> joint.isEmpty()
                        ? position.name().equals(facts.position())
                        : facts.joint().equals(joint))
                .findFirst()
                .orElse(null);
    }

    private Optional<Remark> nuts(Line line, Brought bolt, List<Brought> nuts, Into into) {
        BigDecimal mating = nuts.stream()
                .filter(nut -> mate(bolt, nut))
                .map(Brought::many)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return mating.compareTo(bolt.many()) >= 0
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.line(family, line),
                        Check.THREAD,
                        Digits.plain(bolt.many()) + " of " + bolt.part().number() + ", thread "
                                + bolt.fixing().thread() + ", with "
                                + Digits.plain(mating) + " such nuts",
                        "a " + into.written() + " of the same thread for each, as joints.json says",
                        "Check the thread of the nuts and their count"));
    }

    private Optional<Remark> tapped(Line line, Brought bolt, @Nullable JointFacts facts) {
        return facts == null
                        || facts.thread() == null
                        || ThreadName.mate(bolt.fixing().thread(), facts.thread())
                ? Optional.empty()
                : Optional.of(new Remark(
                        Said.line(family, line),
                        Check.THREAD,
                        bolt.part().number() + ", thread " + bolt.fixing().thread(),
                        "thread " + facts.thread() + ", as joints.json says of the tapped hole",
                        "Check the bolt, or the drawing's hole"));
    }

    private Remark alone(Line line, Brought nut) {
        return new Remark(
                Said.line(family, line),
                Check.THREAD,
                nut.part().number() + ", thread " + nut.fixing().thread() + ", which goes on no bolt of the line",
                "a bolt of the same thread",
                "Check the thread of the nut or of the bolts");
    }

    private Optional<Remark> engaged(Line line, Brought bolt, @Nullable JointFacts facts) {
        return Engagement.of(bolt.fixing(), facts)
                .filter(engagement -> engagement.isShort() || engagement.bottoms())
                .map(engagement -> new Remark(
                        Said.line(family, line),
                        Check.ENGAGEMENT,
                        bolt.part().number() + " reaches " + Digits.plain(engagement.heldMm()) + " mm into its "
                                + engagement.into().written(),
                        "at least " + Digits.plain(engagement.leastMm()) + " mm"
                                + (engagement.depthMm() == null
                                        ? ""
                                        : ", at most " + Digits.plain(engagement.depthMm()) + " mm"),
                        "Check the bolt's length, or 'clampMm' and 'depthMm' in joints.json"));
    }
}

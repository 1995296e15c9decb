package boltlore.trades.fixings;

import boltlore.catalogue.Stage;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.PartNumber;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.BagPage;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sorts a kit's fixings by joint and by bag, and judges each joint. */
final class FixingsMaker {

    private FixingsMaker() {}

    static KitFixings make(KitInWork kit) {
        FamilyPlan plan = kit.plan();
        List<BoltedJoint> joints = new JointsOfKit(plan, kit.bill())
                .all().stream()
                        .sorted(byStage(plan.catalogue().workshop().stages()))
                        .toList();
        Set<PartNumber> counted = joints.stream().flatMap(FixingsMaker::parts).collect(Collectors.toSet());
        List<BagCount> bags = PickingTrade.list(kit).bags().stream()
                .flatMap(page -> counts(page, counted))
                .toList();
        Stream<Finding> notKnown = !joints.isEmpty() && plan.family().joints().isEmpty()
                ? Stream.of(Finding.of(FixingFinding.JOINTS_NOT_KNOWN, "joints.json"))
                : Stream.empty();
        List<ClampedJoint> clamped = ClampedJoint.among(joints);
        return new KitFixings(
                joints,
                clamped,
                bags,
                Stream.of(
                                joints.stream().flatMap(JointJudge::findings),
                                clamped.stream().flatMap(ClampJudge::findings),
                                notKnown)
                        .flatMap(found -> found)
                        .collect(Findings.collected()));
    }

    /**
     * The fixings of one order.
     *
     * @param joints in fitting order
     * @param clamped those of them whose clamp load is compared with a load or with what they clamp
     * @param bags in fitting order
     */
    record KitFixings(List<BoltedJoint> joints, List<ClampedJoint> clamped, List<BagCount> bags, Findings findings) {}

    /** In fitting order; within a stage as in the bill. */
    private static Comparator<BoltedJoint> byStage(List<Stage> stages) {
        List<String> names = stages.stream().map(Stage::name).toList();
        return Comparator.comparing(joint -> names.indexOf(joint.position().stage()));
    }

    private static Stream<PartNumber> parts(BoltedJoint joint) {
        return Stream.concat(
                Stream.of(joint.bolt().number()),
                joint.with().stream().map(each -> each.part().number()));
    }

    /** Bolts and what comes with them, and whatever comes with spares. */
    private static Stream<BagCount> counts(BagPage page, Set<PartNumber> counted) {
        return page.rows().stream()
                .filter(row ->
                        counted.contains(row.part().number()) || row.spares().signum() > 0)
                .flatMap(row -> count(page.stage(), row));
    }

    private static Stream<BagCount> count(String stage, BagRow row) {
        BigDecimal eachKg = row.part().massKg();
        return eachKg == null || eachKg.signum() == 0
                ? Stream.empty()
                : Stream.of(new BagCount(stage, row.bag(), row.part(), row.quantity(), row.spares(), eachKg));
    }
}

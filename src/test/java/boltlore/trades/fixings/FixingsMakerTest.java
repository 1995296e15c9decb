package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.trades.KitInWork;
import boltlore.trades.fixings.FixingsMaker.KitFixings;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo's kits by joint and by bag. */
class FixingsMakerTest {

    private static KitFixings fixings(String order) {
        KitInWork kit = Demo.kit(order);
        return FixingsMaker.make(kit);
    }

    private static BoltedJoint joint(KitFixings fixings, String position) {
        return fixings.joints().stream()
                .filter(each -> each.position().name().text().equals(position))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1003", "bl-1004", "bl-1005", "bl-2001", "bl-2002"})
    void nothing_is_wrong_with_the_demos_joints_and_all_bolts_of_the_bill_are_there(String order) {
        KitFixings fixings = fixings(order);
        BigDecimal inBill = Demo.bill(order).items().stream()
                .filter(item ->
                        item.part().fixing() != null && item.part().fixing().lengthMm() != null)
                .map(item -> item.quantity())
                .reduce(BigDecimal.ZERO, BigDecimal::add);

        assertThat(fixings.findings().stops()).isFalse();
        assertThat(fixings.joints().stream().map(BoltedJoint::quantity).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(inBill);
    }

    @Test
    void a_through_bolt_comes_with_two_washers_and_a_nut() {
        BoltedJoint carrier = joint(fixings("bl-1001"), "battery-carrier");

        assertThat(carrier.bolt().number().text()).isEqualTo("FX-M12X90");
        assertThat(carrier.quantity()).isEqualByComparingTo("6");
        assertThat(carrier.with())
                .extracting(each ->
                        each.part().number().text() + " " + each.quantity().toBigInteger())
                .containsExactly("FX-W12 12", "FX-N12 6");
        assertThat(carrier.safety()).isTrue();
        assertThat(carrier.because()).isEqualTo("The carrier hangs on the floor rails by six through bolts.");
    }

    @Test
    void nuts_that_the_bolted_part_asks_for_go_with_its_bolts() {
        BoltedJoint pedals = joint(fixings("bl-1001"), "pedal-box");

        assertThat(pedals.with())
                .extracting(each ->
                        each.part().number().text() + " " + each.quantity().toBigInteger())
                .containsExactly("FX-W8 6", "FX-N8 6");
    }

    @Test
    void a_joint_that_brackets_share_is_there_once_with_the_larger_ask() {
        List<BoltedJoint> shared = fixings("bl-1001").joints().stream()
                .filter(each -> each.says().contains("shared: front-rail"))
                .toList();

        assertThat(shared).singleElement().satisfies(joint -> {
            assertThat(joint.quantity()).isEqualByComparingTo("6");
            assertThat(joint.safety()).isFalse();
            assertThat(joint.facts()).isNotNull();
        });
    }

    @Test
    void a_bracket_that_carries_no_risk_is_not_signed_for() {
        assertThat(joint(fixings("bl-1001"), "battery-lid").safety()).isFalse();
    }

    private static double mostFrequent(List<String> all) {
        return Set.copyOf(all).stream()
                        .mapToInt(each -> Collections.frequency(all, each))
                        .max()
                        .orElseThrow()
                / (double) all.size();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1012", "bl-2001", "bl-2002"})
    void the_demos_joints_have_each_the_screw_that_it_needs(String order) {
        List<String> joints = fixings(order).joints().stream()
                .map(joint -> joint.fixing().thread() + " x " + joint.fixing().lengthMm() + ", " + joint.torqueNm())
                .toList();
        List<String> same = IntStream.range(0, joints.size())
                .mapToObj(each -> each % 3 == 0 ? joints.get(each) : "M6 x 16, 10.1")
                .toList();

        assertThat(mostFrequent(joints)).isLessThan(0.3);
        assertThat(Set.copyOf(joints)).hasSizeGreaterThan(15);
        assertThat(mostFrequent(same)).as("a near miss").isGreaterThan(0.6);
    }

    @Test
    void a_joint_tightened_by_angle_and_one_of_inch_bolts_are_in_the_demo() {
        KitFixings pickUp = fixings("bl-2001");

        assertThat(joint(pickUp, "propshaft").byAngle()).isTrue();
        assertThat(joint(fixings("bl-1001"), "propshaft").byAngle())
                .as("the van's")
                .isFalse();
        assertThat(joint(pickUp, "column-adaptor").fixing().thread()).isEqualTo("3/8-24 UNF");
        assertThat(pickUp.findings().stops()).isFalse();
    }

    @Test
    void bags_hold_what_the_bill_needs_and_the_spares_of_small_threads() {
        BagCount small = fixings("bl-1001").bags().stream()
                .filter(bag -> bag.part().number().text().equals("FX-M6X16")
                        && bag.stage().equals("rear"))
                .findFirst()
                .orElseThrow();

        assertThat(small.spares()).isEqualByComparingTo("2");
        assertThat(small.netKg()).isEqualByComparingTo(small.count().multiply(small.eachKg()));
        assertThat(small.sure()).as("6 g is known to half a gram only").isFalse();
    }

    @Test
    void joints_come_in_fitting_order() {
        List<String> stages = fixings("bl-1001").joints().stream()
                .map(each -> each.position().stage())
                .distinct()
                .toList();

        assertThat(stages).startsWith("rear", "floor", "front").doesNotHaveDuplicates();
    }
}

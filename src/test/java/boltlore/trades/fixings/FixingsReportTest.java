package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitInWork;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FixingsReportTest {

    private static final int WIDE = 240;

    private static Report demo(String order) {
        KitInWork kit = Demo.kit(order);
        return FixingsTrade.report(FixingsMaker.make(kit), kit);
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/fixings/bl-2001", new TextWriter(WIDE).text(demo("bl-2001")));
    }

    @Test
    void joints_and_terminals_to_sign_for_and_bags_to_weigh_have_pages_of_their_own() {
        assertThat(demo("bl-1001").pages())
                .extracting(Page::name)
                .containsExactly("Joints", "Signed joints", "Terminals", "Bags");
    }

    @Test
    void bags_are_called_by_their_names() {
        assertThat(new TextWriter(WIDE).text(demo("bl-1001")))
                .contains("Charging, front")
                .doesNotContain("front-charging");
    }

    @Test
    void cautions_stand_where_bolts_are_tightened_and_signed_for() {
        assertThat(new TextWriter(WIDE).text(demo("bl-1001")).replaceAll("[\\s|]+", " "))
                .contains("are never replaced by stainless steel")
                .contains("nobody works under a load on a jack")
                .contains("A joint without a signature is an open joint.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-2001"})
    void no_two_joints_to_sign_for_are_called_the_same(String order) {
        KitInWork kit = Demo.kit(order);
        FixingsMaker.KitFixings fixings = FixingsMaker.make(kit);
        List<String> told = fixings.joints().stream()
                .filter(BoltedJoint::safety)
                .map(joint -> SafetyPage.told(joint, fixings, "en"))
                .toList();
        assertThat(told)
                .doesNotHaveDuplicates()
                .anyMatch(says -> says.matches("Torque arms: .*left.*"))
                .contains("Cradle");
    }
}

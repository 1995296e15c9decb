package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Joints, mounts, earth straps, pumps and handed parts of every valid order. */
class NamedAndTurnedRightTest {

    @Nested
    class A_joint {

        @Test
        void that_holds_the_drive_unit_is_signed_for() {
            assertThat(demo().in(
                                    "families/stook-pickup/joints.json",
                                    "{\"position\": \"drive-mount-front\", \"safety\": true,",
                                    "{\"position\": \"drive-mount-front\",")
                            .found(PICKUP))
                    .allMatch(title -> title.startsWith("heavy joint not named: drive-mount-front"))
                    .hasSize(2);
        }

        @Test
        void whose_bolts_are_secured_or_large_is_named() {
            assertThat(without("export-transformer-bracket").found(PICKUP))
                    .containsExactly("joint not named: export-transformer-bracket");
        }

        @Test
        void of_small_bolts_without_a_lock_needs_no_name() {
            assertThat(without("inlet").found(PICKUP)).isEmpty();
        }

        /** The pick-up without the line of joints.json that names that position. */
        private static Planted without(String position) {
            return demo().rewriting(
                            "families/stook-pickup/joints.json",
                            text -> text.lines()
                                    .filter(line -> !line.contains("{\"position\": \"" + position + "\","))
                                    .collect(Collectors.joining("\n")));
        }
    }

    @Test
    void a_battery_box_hangs_on_a_mount() {
        assertThat(demo().in(
                                "families/pannier-van/driving.json",
                                "\"carries\": [\"rear-box\", \"rear-lid\"",
                                "\"carries\": [\"rear-lid\"")
                        .found(VAN))
                .containsExactly("hangs on no mount: rear-box");
    }

    /** What lies in a box hangs where the box does as long as it is fastened there, or the mount names it itself. */
    @Test
    void what_a_box_holds_hangs_on_a_mount_with_it() {
        Planted unnamed = demo().in("families/pannier-van/driving.json", "\"rear-modules\", ", "");
        assertThat(unnamed.found(VAN)).isEmpty();
        assertThat(unnamed.in(
                                "families/pannier-van/kit/battery.json",
                                "\"crate\": \"crate-modules\", \"under\": \"rear-box\"",
                                "\"crate\": \"crate-modules\"")
                        .found(VAN))
                .containsExactly("hangs on no mount: rear-modules");
    }

    @Nested
    class An_earth_strap {

        private static final String FACE =
                ", {\"kind\": \"earth\", \"size\": \"20\", \"count\": 1, \"treat\": \"masked\"}";

        @Test
        void is_bolted_to_bare_metal() {
            assertThat(demo().rewriting(
                                    "parts/pannier-drive.json",
                                    text -> text.lines()
                                            .map(line -> line.contains("\"part\": \"PV-CR-E\"")
                                                    ? line.replace(FACE, "")
                                                    : line)
                                            .reduce((one, other) -> one + "\n" + other)
                                            .orElseThrow())
                            .found(VAN))
                    .containsExactly("earth strap on a coat: cradle-early (drive-bonding)");
        }

        @Test
        void is_bolted_to_something_that_is_there() {
            assertThat(demo().inFits(
                                    VAN,
                                    "\"from\": \"rear-carrier\", \"when\": {\"battery\": \"two-strings\"}",
                                    "\"from\": \"condenser\", \"when\": {\"battery\": \"two-strings\"}")
                            .found(VAN))
                    .containsExactly("earth strap loose: bonding-straps (condenser)");
        }

        @Test
        void joins_two_things_that_are_named() {
            assertThat(demo().inFits(PICKUP, "  {\"strap\": \"drive-bonding\", \"from\": \"cradle\"},\n", "")
                            .found(PICKUP))
                    .containsExactly("earth straps not named: drive-bonding");
        }
    }

    @Test
    void a_pump_pumps_the_way_the_circuit_runs() {
        assertThat(demo().inFits(
                                PICKUP,
                                "{\"position\": \"motor-pump\", \"in\": \"in\", \"out\": \"out\"}",
                                "{\"position\": \"motor-pump\", \"in\": \"out\", \"out\": \"in\"}")
                        .found(PICKUP))
                .containsExactly(
                        "flows backwards: motor-coolant (motor-pump out)",
                        "flows backwards: motor-coolant (motor-pump in)");
        // A radiator takes its coolant either way.
        assertThat(demo().inFits(
                                PICKUP,
                                "{\"position\": \"motor-radiator\", \"in\": \"in\", \"out\": \"out\"}",
                                "{\"position\": \"motor-radiator\", \"in\": \"out\", \"out\": \"in\"}")
                        .found(PICKUP))
                .isEmpty();
    }

    @Test
    void parts_of_the_other_hand_or_body_are_told_with_both_lines() {
        List<String> found = demo().rewriting(
                        "families/stook-pickup/kit/cooling.json",
                        text -> text.replace("\"ST-HTB-L\"", "\"ST-HTB-X\"")
                                .replace("\"ST-HTB-R\"", "\"ST-HTB-L\"")
                                .replace("\"ST-HTB-X\"", "\"ST-HTB-R\""))
                .found(PICKUP);
        assertThat(found)
                .hasSize(2)
                .allMatch(title -> title.startsWith("made for another vehicle: motor-tank-bracket-"));
    }
}

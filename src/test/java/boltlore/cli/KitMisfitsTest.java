package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What a proof finds of the orders of a family, the kit finds of its one order")
class KitMisfitsTest {

    private static final Path ORDER = Path.of("catalog", "orders", "bl-1001.json");

    @TempDir
    private Path folder;

    private Ran kit(String file, String from, String to) throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, file, from, to);
        return boltlore("kit", "--catalogue", catalogue, ORDER, "--out", folder.resolve("out"));
    }

    private static String flat(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    @Nested
    class A_cable_is_missing_on_an_energy_path {

        private static final String FILE = "families/pannier-van/kit/high-voltage.json";
        private static final String LEFT =
                "\"part\": \"PV-HE-L\", \"quantity\": \"1\", \"when\": {\"drive-side\": \"left\"";

        @Test
        void in_this_order_which_stops_its_sheets() throws IOException {
            Ran ran = kit(FILE, LEFT, LEFT + ", \"air-conditioning\": \"no\"");
            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.STOPPED);
            assertThat(flat(ran))
                    .contains("Stop, kit: Path or circuit broken: Nothing stands at")
                    .contains("(cable-dc), through which dc-inlet-to-pack goes.");
            assertThat(folder.resolve("out")).doesNotExist();
        }

        @Test
        void and_the_trades_tell_what_they_find_all_the_same() throws IOException {
            Ran ran = kit(FILE, LEFT, LEFT + ", \"air-conditioning\": \"no\"");
            assertThat(flat(ran)).contains("Check, ship: ").contains("No sheets written");
        }

        @Test
        void in_others_only() throws IOException {
            Ran ran = kit(FILE, LEFT, LEFT + ", \"air-conditioning\": \"yes\"");
            assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        }
    }

    @Test
    void choices_that_make_no_kit_are_told_with_the_trades_that_judged_nothing() {
        Ran ran = boltlore("kit", Path.of("catalog/orders/bl-1006.json"), "--out", folder.resolve("out"));
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran))
                .contains("Note, kit: ")
                .contains("make no kit yet, so picking, cut,")
                .contains("fixings");
    }

    @Test
    void a_removed_fuse_is_told_with_the_branches_that_are_without_it() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder, "families/pannier-van/kit/battery.json", "\"part\": \"HV-F400\"", "\"part\": \"HV-F300\"");
        Ran ran = boltlore("prove", "pannier-van", "--catalogue", catalogue);
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err().replaceAll("\\s+", " "))
                .contains(
                        "HV-F400, which nothing uses, although electrics.json of pannier-van has it as fuse 'main-400'"
                                + " of branches battery-90-kw, drive-90-kw, which are without it");
    }

    @Test
    void the_bolts_of_a_mount_have_another_thread_than_its_holes() throws IOException {
        String joint = "{\"position\": \"drive-mount-front\", \"safety\": true, \"clampMm\": 20, \"into\": \"steel\","
                + " \"depthMm\": 20, \"thread\": ";
        Ran ran = kit("families/pannier-van/joints.json", joint + "\"M10\"", joint + "\"M12\"");
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran)).contains("the bolts have thread M10, what they go into has M12");
    }

    /** The proof's trial kits tell it too, for what is promised is the catalogue's and not one vehicle's. */
    @Test
    void a_promise_that_no_kit_keeps() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder, "families/stook-pickup/driving.json", "\"rangeKm\": \"95\"", "\"rangeKm\": \"190\"");
        assertThat(flat(boltlore("prove", "stook-pickup", "--catalogue", catalogue)))
                .contains("Check: range below promise: ");
    }
}

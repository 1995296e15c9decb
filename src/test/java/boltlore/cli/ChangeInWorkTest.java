package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A change in the middle of work")
class ChangeInWorkTest {

    private static final String ORDER = "BL-1001";
    private static final String WITH_AIR = "\"air-conditioning\": \"yes\"";
    private static final String WITHOUT_AIR = "\"air-conditioning\": \"no\"";
    private static final String SERIAL = "S-77";

    @TempDir
    private Path folder;

    private DeskAt desk = new DeskAt("");

    @Test
    @DisplayName(
            "is carried out: picked parts come back, cut ones go where somebody says, the queue and the needs follow")
    void carriedOut() throws IOException {
        desk = DeskAt.file(folder);
        started();
        String effect = desk.done(
                "change",
                "propose",
                ORDER,
                DeskAt.order(folder, WITH_AIR, WITHOUT_AIR),
                "--reason",
                "no air after all");
        assertThat(effect)
                .contains("AC-COMP rev. A: picked already")
                .contains("PV-KB")
                .contains("cut already");
        assertThat(desk.refused("order", "move", ORDER, "shipped")).contains("'in work', from where");
        desk.done("change", "decide", ORDER, "1", "accept");
        assertThat(desk.refused("change", "decide", ORDER, "1", "done"))
                .contains("picked, and not asked for by the kit any more")
                .contains("1 AC-COMP")
                .contains("'boltlore change carry BL-1001 1'");

        String open = desk.refused("change", "carry", ORDER, "1");
        assertThat(open).contains("1 PV-KB that were cut and go out of the kit").contains("--scrap PV-KB=N");
        assertThat(desk.refused("change", "carry", ORDER, "1", "--scrap", "PV-KB=2"))
                .contains("more than were cut");
        String waiting = desk.done("coating", "list", "--order", ORDER);
        assertThat(waiting).contains("BL-1001/PV-KB/1 in");
        assertThat(desk.done("change", "carry", ORDER, "1", "--scrap", "PV-KB=1", "--reason", "no air"))
                .contains("back: 1 AC-COMP, serial number " + SERIAL)
                .contains("out of the coating queue: BL-1001/PV-KB/1")
                .contains("cut in vain: 1 PV-KB");
        assertThat(desk.done("coating", "list", "--order", ORDER)).doesNotContain("PV-KB/1");
        assertThat(desk.done("stock", "list", "AC-COMP")).contains("1 each AC-COMP, serial number " + SERIAL);
        assertThat(desk.done("recall", "--serial", SERIAL)).contains("taken out since");
        assertThat(desk.done("stock", "lacking", "AC-COMP")).contains("Nothing is lacking.");
        assertThat(desk.done("stock", "lacking", "HV-BP1")).contains("1 lacking of HV-BP1");
        assertThat(desk.done("change", "decide", ORDER, "1", "done")).contains("carried out");
        assertThat(desk.done("book", "check")).contains("all sums are as it says");
    }

    /** Cut, in the coating queue, and the compressor picked. */
    private void started() {
        desk.done("order", "draft", "catalog/orders/bl-1001.json");
        desk.done("order", "quote", ORDER);
        desk.done("order", "confirm", ORDER);
        desk.done("order", "move", ORDER, "in-work");
        desk.done("rack", "cut", ORDER, "--done");
        desk.done("built", "work", ORDER, "PV-KB", "cut");
        desk.done("coating", "queue", ORDER);
        desk.done("stock", "receive", "AC-COMP", "1", "--serial", SERIAL);
        assertThat(desk.done("stock", "lacking", "AC-COMP")).contains("Nothing is lacking.");
        desk.done("pick", "take", ORDER, "AC-COMP", "--serial", SERIAL);
        assertThat(desk.done("recall", "--serial", SERIAL)).contains("1 kit.");
    }

    @Test
    @DisplayName(
            "that would leave a Stop is not accepted; an order with picked parts or pieces in the shop is not cancelled")
    void held() throws IOException {
        desk = DeskAt.file(folder);
        started();
        assertThat(desk.refused("order", "move", ORDER, "cancelled", "--yes", "--reason", "moved abroad"))
                .contains("1 lines that were picked for it")
                .contains("pieces in the coating shop");
        assertThat(desk.refused("pick", "back-all", ORDER)).contains("why all of it comes back");
        desk.done("pick", "back-all", ORDER, "--reason", "moved abroad");
        desk.done("coating", "withdraw", ORDER, "--reason", "moved abroad");
        assertThat(desk.done("order", "move", ORDER, "cancelled", "--reason", "moved abroad"))
                .contains("cancelled");
        assertThat(desk.done("stock", "lacking")).contains("Nothing is lacking.");
        assertThat(desk.done("book", "check")).contains("all sums are as it says");
    }
}

package boltlore.trades.bill.sheets;

import boltlore.report.Approved;
import boltlore.report.Block;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.text.TextWriter;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The beginning of every page, as a person has read and approved it; a change shows as a difference to read. */
@DisplayName("The sheets of a demo order read as approved")
class ApprovedBillTest {

    private static final int LINES_OF_A_BLOCK = 40;

    @Test
    @DisplayName("the bill of an order with partner, extras and a waiver")
    void bill() {
        DemoKit kit = DemoKit.of("BL-1010");
        String revision = kit.plan().catalogue().revision().substring(0, 12);
        String text = start(kit.billBook()).replace(revision, "(hash)");
        Approved.check("trades/bill/sheets/bill-bl-1010", text);
    }

    @Test
    @DisplayName("the contents list of a German order")
    void contents() {
        DemoKit kit = DemoKit.of("BL-1011");
        Approved.check("trades/bill/sheets/contents-bl-1011", start(kit.contents()));
    }

    private static String start(Report report) {
        return report.pages().stream().map(ApprovedBillTest::start).collect(Collectors.joining("\n"));
    }

    private static String start(Page page) {
        return "-- " + page.name() + "\n\n"
                + page.blocks().stream().map(ApprovedBillTest::start).collect(Collectors.joining("\n"));
    }

    private static String start(Block block) {
        String text = new TextWriter(220).text(block);
        return text.lines().limit(LINES_OF_A_BLOCK).collect(Collectors.joining("\n", "", "\n"));
    }
}

package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.By;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("An order in the book")
class OrdersInBookTest {

    private static final Path ORDER = Path.of("catalog/orders/bl-1001.json");
    private static final String WITH_AIR = "\"air-conditioning\": \"yes\"";
    private static final String WITHOUT_AIR = "\"air-conditioning\": \"no\"";

    @TempDir
    private Path folder;

    private DeskAt desk;

    @BeforeEach
    void open() {
        desk = DeskAt.file(folder);
    }

    private void confirmed() {
        confirm(desk);
    }

    /** As the journal says it, without the rooms' work before it. */
    private void shipped() {
        Place place = ((Outcome.Sound<Place>) Place.of(desk.book(), Map.of())).value();
        By by = new By(Instant.now(), LocalDate.now(ZoneId.systemDefault()), "desk", "Kim Aster");
        try (Book book = ((Outcome.Sound<Book>) Book.open(place)).value()) {
            book.write(by, writing -> {
                for (OrderState state : List.of(OrderState.IN_WORK, OrderState.TESTED, OrderState.SHIPPED)) {
                    writing.add(new OrderHappening.Moved("BL-1001", state), "");
                }
                return Outcome.sound(true);
            });
        }
    }

    private static void confirm(DeskAt desk) {
        desk.done("order", "draft", ORDER);
        desk.done("order", "quote", "BL-1001");
        desk.done("order", "confirm", "BL-1001");
    }

    @Test
    @DisplayName("that is cancelled names the purchase orders that were placed for it, and what was made")
    void cancelled() {
        confirmed();
        desk.done("order", "draft", "catalog/orders/bl-1004.json");
        desk.done("order", "quote", "BL-1004");
        desk.done("order", "confirm", "BL-1004");
        desk.done("purchase", "place", "--until", "2040-01-01");
        desk.done("built", "work", "BL-1001", "FX-N6", "cut", "--quantity", "2");
        desk.done("built", "work", "BL-1001", "FX-N6", "bought", "--quantity", "3");
        String told = desk.done("order", "move", "BL-1001", "cancelled", "--yes", "--reason", "the donor is gone");
        assertThat(told)
                .contains("Bought for it by PO-1001 from ")
                .contains("still to come. ")
                .contains("Cut for it: 2 FX-N6 rev. ")
                .contains("Bought for it: 3 FX-N6 rev. ")
                .contains("'boltlore purchase close NUMBER'");
        assertThat(desk.done("order", "show", "BL-1001")).contains("Bought for it by PO-1001 from ");
        assertThat(desk.done("order", "show", "BL-1001", "--json"))
                .contains("\"left\": { \"bought\": [ { \"purchase\": \"PO-1001\"");
        assertThat(desk.done("order", "show", "BL-1004")).doesNotContain("Bought for it");
    }

    @Nested
    @DisplayName("as draft and quotation")
    class Open {

        @Test
        @DisplayName("may be partial, and then is not quoted but told what is open")
        void partial() throws IOException {
            Path partial = DeskAt.order(folder, WITH_AIR + ", ", "");
            assertThat(desk.done("order", "draft", partial)).contains("BL-1001, pannier-van: draft");
            assertThat(desk.refused("order", "quote", "BL-1001")).contains("'boltlore choose' says what is open");
        }

        @Test
        @DisplayName("that is taken down a second time without a change leaves no entry, with one it does")
        void again() throws IOException {
            desk.done("order", "draft", ORDER);
            String before = desk.done("book", "info");
            desk.done("order", "draft", ORDER);
            assertThat(desk.done("book", "info")).isEqualTo(before);
            desk.done("order", "draft", DeskAt.order(folder, WITH_AIR, WITHOUT_AIR));
            assertThat(desk.done("book", "info")).isNotEqualTo(before);
        }

        @Test
        @DisplayName("keeps every version of its quotation, and says what differs between two")
        void versions() throws IOException {
            desk.done("order", "draft", ORDER);
            String first = desk.done("order", "quote", "BL-1001");
            desk.done("order", "draft", DeskAt.order(folder, WITH_AIR, WITHOUT_AIR), "--reason", "no air after all");
            desk.done("order", "quote", "BL-1001");

            assertThat(desk.done("order", "versions", "BL-1001"))
                    .contains(first.replaceFirst("BL-1001, ", "")
                            .replaceFirst(" [0-9]+ to check.*", "")
                            .strip())
                    .contains("version 2 of ");
            assertThat(desk.done("order", "versions", "BL-1001", "1", "2"))
                    .contains("choices/air-conditioning: yes, then no")
                    .contains("goes out: 1 each AC-COMP rev. A")
                    .contains("comes in: 1 each HV-BP1 rev. A")
                    .doesNotContain("catalogue was changed");
            assertThat(desk.refused("order", "versions", "BL-1001", "1", "3")).contains("a version from 1 to 2");
        }

        @Test
        @DisplayName("that was changed after it was quoted is quoted again before it is confirmed")
        void changedSince() throws IOException {
            desk.done("order", "draft", ORDER);
            desk.done("order", "quote", "BL-1001");
            desk.done("order", "draft", DeskAt.order(folder, WITH_AIR, WITHOUT_AIR));
            assertThat(desk.refused("order", "confirm", "BL-1001")).contains("changed after version 1 was quoted");
            desk.done("order", "quote", "BL-1001");
            assertThat(desk.done("order", "confirm", "BL-1001")).contains("ordered (version 2)");
        }

        @Test
        @DisplayName("is lost with a reason only")
        void lost() {
            desk.done("order", "draft", ORDER);
            assertThat(desk.refused("order", "move", "BL-1001", "lost")).contains("why it is lost");
            assertThat(desk.done("order", "move", "BL-1001", "lost", "--reason", "bought another van"))
                    .contains("lost");
            assertThat(desk.done("order", "list")).doesNotContain("BL-1001").contains("1 lost");
        }

        @Test
        @DisplayName("goes no way that it has not")
        void states() {
            desk.done("order", "draft", ORDER);
            assertThat(desk.refused("order", "move", "BL-1001", "shipped"))
                    .contains("'draft', from where it does not go to 'shipped'; expected one of lost");
            assertThat(desk.refused("order", "confirm", "BL-1001")).contains("expected a quoted order");
            assertThat(desk.refused("order", "quote", "BL-9999")).contains("found the order 'BL-9999'");
        }
    }

    @Nested
    @DisplayName("once confirmed")
    class Frozen {

        @Test
        @DisplayName("is not taken down otherwise")
        void closed() throws IOException {
            confirmed();
            assertThat(desk.refused("order", "draft", DeskAt.order(folder, WITH_AIR, WITHOUT_AIR)))
                    .contains("It is frozen: 'boltlore change propose BL-1001'");
            assertThat(desk.refused("order", "quote", "BL-1001")).contains("It is frozen");
        }

        @Test
        @DisplayName("has the kit that it was confirmed with, whatever becomes of the catalogue")
        void keepsItsKit() throws IOException {
            confirmed();
            String kit = desk.done("order", "show", "BL-1001", "--kit");
            assertThat(kit).contains("AC-COMP A");
            Path edited = edited();

            assertThat(desk.done("order", "show", "BL-1001", "--kit")).isEqualTo(kit);
            desk.run("order", "sheets", "BL-1001", "--out", folder.resolve("out"));
            assertThat(Files.readString(folder.resolve("out/BL-1001/customer/csv/contents-contents.csv")))
                    .contains("AC-COMP");
            assertThat(desk.done("change", "touches", "--catalogue", edited))
                    .contains("BL-1001, pannier-van: ordered (version 1), due 2026-06-19 AC-COMP: revision A, then B")
                    .contains("1 orders.");
            assertThat(desk.done("change", "touches")).isEqualTo("0 orders. ");
        }

        @Test
        @DisplayName("keeps the hash of each sheet that was issued")
        void issued() {
            confirmed();
            Ran sheets = desk.run("order", "sheets", "BL-1001", "--out", folder.resolve("out"));
            assertThat(sheets.exit()).as(sheets.toString()).isLessThanOrEqualTo(Exit.STOPPED);
            assertThat(desk.done("book", "journal")).contains("sheets issued");
            assertThat(desk.done("book", "check")).contains("all sums are as it says");
        }

        @Test
        @DisplayName("takes an edit of the catalogue by a change order only")
        void engineeringChange() throws IOException {
            confirmed();
            String proposed = desk.done(
                    "change",
                    "propose",
                    "BL-1001",
                    "--catalogue",
                    edited(),
                    "--asked-by",
                    "workshop",
                    "--reason",
                    "leaks");
            assertThat(proposed)
                    .contains("BL-1001, change 1 (workshop): proposed – leaks")
                    .contains("goes out: 1 each AC-COMP rev. A")
                    .contains("comes in: 1 each AC-COMP rev. B");
            assertThat(desk.done("order", "show", "BL-1001", "--kit")).contains("AC-COMP A");
            desk.done("change", "decide", "BL-1001", "1", "accept");
            assertThat(desk.done("order", "show", "BL-1001", "--kit")).contains("AC-COMP B");
        }

        /** The demo catalogue with a new revision of the compressor. */
        private Path edited() throws IOException {
            String file;
            try (Stream<Path> parts = Files.list(Path.of("catalog/parts"))) {
                file = parts.filter(path -> holds(path, "\"part\": \"AC-COMP\", \"revision\": \"A\""))
                        .map(path -> "parts/" + path.getFileName())
                        .findFirst()
                        .orElseThrow();
            }
            return ChangedCatalogue.in(
                    Files.createTempDirectory(folder, "edited"),
                    file,
                    "\"part\": \"AC-COMP\", \"revision\": \"A\"",
                    "\"part\": \"AC-COMP\", \"revision\": \"B\"");
        }

        private static boolean holds(Path file, String text) {
            try {
                return Files.readString(file).contains(text);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
    }

    /**
     * ISO 10007:2017, 5.4 (as its preview and abstracts print it): the process for controlling a change includes a) a
     * description of, justification for and documented information of the change; b) a categorization; c) an evaluation of
     * the consequences; d) how it is dispositioned; e) how it is implemented and verified. 5.5 status accounting reports
     * the status of proposed changes and of the implementation of approved ones; 5.6 audits what is built against it.
     */
    @Nested
    @DisplayName("with a change order")
    class ChangeOrders {

        private Path without;

        @BeforeEach
        void frozen() throws IOException {
            confirmed();
            without = DeskAt.order(folder, WITH_AIR, WITHOUT_AIR);
        }

        private String propose() {
            return desk.done("change", "propose", "BL-1001", without, "--reason", "no air after all");
        }

        @Test
        @DisplayName("has a justification (5.4 a)")
        void justified() {
            assertThat(desk.refused("change", "propose", "BL-1001", without))
                    .contains("expected the justification of the change");
        }

        @Test
        @DisplayName("is evaluated: what comes in, goes out, what of it is done already, cost and days (5.4 c)")
        void evaluated() {
            desk.done("built", "work", "BL-1001", "AC-COMP", "bought");
            desk.done("built", "work", "BL-1001", "FX-W8", "picked", "--quantity", "3");
            assertThat(propose())
                    .contains("choices/air-conditioning: yes, then no")
                    .contains("goes out: 1 each AC-COMP rev. A")
                    .contains("1 AC-COMP rev. A: bought already")
                    .doesNotContain("FX-W8 rev. B: picked already")
                    .containsPattern(
                            "Price: EUR -[0-9,.]+ before tax; cost: EUR -[0-9,.]+; lead time: [+-][0-9]+ days");
        }

        @Test
        @DisplayName("changes nothing until it is accepted, and then the kit (5.4 d)")
        void accepted() {
            propose();
            assertThat(desk.done("order", "show", "BL-1001", "--kit")).contains("AC-COMP");
            desk.done("change", "decide", "BL-1001", "1", "accept");
            assertThat(desk.done("order", "show", "BL-1001", "--kit")).doesNotContain("AC-COMP");
        }

        @Test
        @DisplayName("is dropped with a reason, and then changes nothing")
        void dropped() {
            propose();
            assertThat(desk.refused("change", "decide", "BL-1001", "1", "drop")).contains("why it is dropped");
            desk.done("change", "decide", "BL-1001", "1", "drop", "--reason", "too late");
            assertThat(desk.refused("change", "decide", "BL-1001", "1", "accept"))
                    .contains("'dropped', which does not become 'accepted'");
            assertThat(desk.done("order", "show", "BL-1001", "--kit")).contains("AC-COMP");
        }

        @Test
        @DisplayName("is carried out and verified after it was accepted only (5.4 e)")
        void carriedOut() {
            propose();
            assertThat(desk.refused("change", "decide", "BL-1001", "1", "done"))
                    .contains("expected accepted or dropped");
            desk.done("change", "decide", "BL-1001", "1", "accept");
            assertThat(desk.done("change", "decide", "BL-1001", "1", "done")).contains("carried out");
        }

        @Test
        @DisplayName("is listed with its state, and evaluated against the kit that it started from (5.5)")
        void accounted() throws IOException {
            String effect = propose();
            desk.done(
                    "change", "propose", "BL-1001", DeskAt.order(folder, "\"green\"", "\"grey\""), "--reason", "blue");
            assertThat(desk.done("change", "list"))
                    .contains("change 1 (customer): proposed")
                    .contains("change 2");
            desk.done("change", "decide", "BL-1001", "1", "accept");
            assertThat(desk.done("change", "list")).doesNotContain("change 1 ").contains("change 2");
            assertThat(desk.done("change", "list", "BL-1001"))
                    .contains(effect.replace("proposed", "accepted").strip());
        }

        @Test
        @DisplayName("that was evaluated against a kit which is another by now is not accepted")
        void overtaken() throws IOException {
            propose();
            desk.done(
                    "change", "propose", "BL-1001", DeskAt.order(folder, "\"green\"", "\"grey\""), "--reason", "blue");
            desk.done("change", "decide", "BL-1001", "2", "accept");
            assertThat(desk.refused("change", "decide", "BL-1001", "1", "accept"))
                    .contains("a change of a kit that is another one by now");
        }

        @Test
        @DisplayName("that changes nothing is none")
        void empty() {
            assertThat(desk.refused("change", "propose", "BL-1001", ORDER, "--reason", "?"))
                    .contains("the order and the kit as they are");
        }
    }

    @Test
    @DisplayName("that is shipped takes a service order, and no change order")
    void service() {
        confirmed();
        assertThat(desk.refused("change", "service", "BL-1001", "--part", "CH-11=1", "--price", "0", "--reason", "w"))
                .contains("expected a shipped kit");
        assertThat(desk.refused("order", "move", "BL-1001", "shipped")).contains("expected one of in work, cancelled");
        shipped();
        assertThat(desk.refused("change", "propose", "BL-1001", "--reason", "late"))
                .contains("'boltlore change service' adds parts to it");
        desk.done("change", "service", "BL-1001", "--part", "CH-11=1", "--price", "916.00", "--reason", "spare");
        assertThat(desk.done("change", "list", "BL-1001"))
                .contains("change 1 (service): accepted – spare comes in: 1 each CH-11 rev. A Price: +EUR 916.00");
        assertThat(desk.done("recall", "--part", "CH-11")).contains("BL-1001, shipped, Orchard Lane Bakery");
        assertThat(desk.done("book", "check")).contains("all sums are as it says");
    }

    @Test
    @DisplayName("goes from draft to shipped on a server as in a file, and back into a file, with the same journal")
    void onServer() throws IOException {
        desk = DeskAt.server();
        confirmed();
        desk.done("change", "propose", "BL-1001", DeskAt.order(folder, WITH_AIR, WITHOUT_AIR), "--reason", "no air");
        desk.done("change", "decide", "BL-1001", "1", "accept");
        desk.done("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "S-1");
        desk.done("order", "move", "BL-1001", "in-work");
        assertThat(desk.done("book", "check")).contains("all sums are as it says");
        DeskAt file = DeskAt.file(folder);
        assertThat(desk.done("book", "move", file.book())).contains("hold the same in every table");
        assertThat(file.exported(folder)).isEqualTo(desk.exported(folder));
        assertThat(file.done("order", "list")).isEqualTo(desk.done("order", "list"));
    }
}

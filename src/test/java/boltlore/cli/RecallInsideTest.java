package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.By;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A high-voltage cable is made of wire and of two kits of a connector and its cap: what is recalled lies two levels down. */
@DisplayName("A recall of what lies inside an assembly that was made here")
class RecallInsideTest {

    private static final String CABLE = "PV-HB-ML";
    private static final String KIT = "HV-K50";
    private static final String CAP = "HV-KC50";

    @TempDir
    private Path folder;

    private void confirmed(DeskAt desk, String... orders) {
        for (String order : orders) {
            desk.done("order", "draft", "catalog/orders/" + order.toLowerCase(java.util.Locale.ROOT) + ".json");
            desk.done("order", "quote", order);
            desk.done("order", "confirm", order);
        }
    }

    /** A cable of parts of that lot, made in two steps. */
    private static void made(DeskAt desk, String cable, String lot) {
        desk.done("stock", "receive", CAP, "4", "--lot", lot);
        desk.done("stock", "receive", KIT, "2", "--over", "--reason", "for the shelf");
        desk.done("stock", "receive", CABLE, "1", "--serial", cable, "--over", "--reason", "for the shelf");
    }

    /** As the journal says it, without the rooms' other work. */
    private static void shipped(DeskAt desk, String order) {
        Place place = ((Outcome.Sound<Place>) Place.of(desk.book(), Map.of())).value();
        By by = new By(Instant.now(), LocalDate.of(2026, 11, 30), "desk", "Kim Aster");
        try (Book book = ((Outcome.Sound<Book>) Book.open(place)).value()) {
            book.write(by, writing -> {
                for (OrderState state : List.of(OrderState.IN_WORK, OrderState.TESTED, OrderState.SHIPPED)) {
                    writing.add(new OrderHappening.Moved(order, state), "");
                }
                return Outcome.sound(true);
            });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"file", "server"})
    @DisplayName("finds the kit that left with it, two levels up, and not the one whose cable was picked before")
    void twoLevels(String kept) {
        DeskAt desk = kept.equals("file") ? DeskAt.file(folder) : DeskAt.server();
        confirmed(desk, "BL-1001", "BL-1003");
        made(desk, "CABLE-1", "LOT-GOOD");
        desk.done("pick", "take", "BL-1003", CABLE, "--serial", "CABLE-1");
        made(desk, "CABLE-2", "LOT-BAD");
        assertThat(desk.done("recall", "--lot", "LOT-BAD")).isEqualTo("0 kits. ");
        assertThat(desk.done("recall", "--part", "NO-SUCH-1")).contains("No such part");
        assertThat(desk.done("recall", "--part", CAP.toLowerCase(java.util.Locale.ROOT)))
                .contains("kits.")
                .doesNotContain("0 kits", "No such part");

        desk.done("pick", "back", "BL-1003", CABLE, "1", "--serial", "CABLE-1", "--reason", "the wrong one");
        desk.done("pick", "take", "BL-1003", CABLE, "--serial", "CABLE-2");
        shipped(desk, "BL-1003");

        assertThat(desk.done("recall", "--lot", "lot-bad"))
                .contains("BL-1003, shipped")
                .contains(CABLE + ", may hold it: made here with that lot in the stores")
                .contains("1 kit.")
                .doesNotContain("BL-1001");
        assertThat(desk.done("recall", "--lot", "LOT-BAD", "--part", CAP)).contains("1 kit.");
        assertThat(desk.done("recall", "--lot", "LOT-BAD", "--part", KIT)).startsWith("0 kits.");
        assertThat(desk.done("book", "check")).contains("all sums are as it says");
    }

    @Test
    @DisplayName("does not name a kit that got nothing but what was made of another lot")
    void otherLot() {
        DeskAt desk = DeskAt.file(folder);
        confirmed(desk, "BL-1003");
        made(desk, "CABLE-1", "LOT-GOOD");
        desk.done("pick", "take", "BL-1003", CABLE, "--serial", "CABLE-1");
        desk.done("stock", "receive", CAP, "4", "--lot", "LOT-LATER");

        assertThat(desk.done("recall", "--lot", "lot-later"))
                .startsWith("0 kits.")
                .contains("In no kit: 4 of " + CAP + ", lot LOT-LATER");
        assertThat(desk.done("recall", "--lot", "LOT-LATE")).isEqualTo("0 kits. ");
        assertThat(desk.done("recall", "--lot", "LOT-GOOD")).contains("BL-1003, ordered");
    }
}

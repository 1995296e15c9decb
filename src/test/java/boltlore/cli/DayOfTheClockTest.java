package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The day by which buying is judged")
class DayOfTheClockTest {

    private static final String CLOCK = "--clock=2026-03-10T09:00:00Z";

    @TempDir
    private static Path folder;

    private static DeskAt desk = new DeskAt("");

    @BeforeAll
    static void bought() throws IOException {
        desk = DeskAt.file(folder);
        desk.done("order", "draft", DeskAt.order(folder, "BL-1001", "BL-1001"), CLOCK);
        desk.done("order", "quote", "BL-1001", CLOCK);
        desk.done("order", "confirm", "BL-1001", CLOCK);
        desk.done("purchase", "place", "--until", "2027-12-31", CLOCK);
    }

    @Test
    @DisplayName("is that of the entries: what was placed just now is not overdue")
    void notOverdue() {
        assertThat(desk.done("purchase", "list", CLOCK)).contains("PO-1001").doesNotContain("overdue");
    }

    @Test
    @DisplayName("is that of the entries: years later all of it is overdue")
    void overdue() {
        assertThat(desk.done("purchase", "list", "--late", "--clock=2031-03-10T09:00:00Z"))
                .contains("PO-1001", "overdue");
    }

    @Test
    @DisplayName("is that of the entries where shortness is judged: nothing that is short is months late")
    void nothingLate() {
        assertThat(desk.done("stock", "short", CLOCK))
                .contains(" short of ")
                .doesNotContainPattern("[0-9]{3} days late");
    }
}

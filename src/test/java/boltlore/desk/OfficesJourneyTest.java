package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.orders.OrderDesk;
import boltlore.book.orders.PersonDesk;
import boltlore.book.stores.PickDesk;
import boltlore.book.stores.PickLine;
import boltlore.book.stores.Taken;
import boltlore.catalogue.Tracked;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The engineer and the owner")
class OfficesJourneyTest extends RoomInBrowser {

    private static final String PART = "FX-W6";

    @TempDir
    private Path folder;

    @Test
    @DisplayName("find a part, see which orders hold it and why, by keyboard alone")
    void part() {
        go("/engineering");
        assertThat(page.locator("#words")).isFocused();
        type("washer m6");
        press("Enter");
        tabTo(page.locator("a[href='/engineering/part?part=" + PART + "']"));
        press("Enter");
        assertThat(page.locator("h1")).containsText(PART);
        assertThat(page.locator("tbody")).containsText(RoomsBook.FIRST);
        tabTo(page.locator("a[href*='/engineering/why?order=" + RoomsBook.FIRST + "']")
                .first());
        press("Enter");
        assertThat(page.locator("h1")).hasText("Why " + PART + " is in " + RoomsBook.FIRST);
        assertThat(page.locator(".reasons li").count()).isPositive();
    }

    @Test
    @DisplayName("see what would bring in a part that an order does not hold")
    void not_in() {
        String absent = OpenDesk.catalogue().parts().keySet().stream()
                .map(number -> number.text())
                .filter(number -> number.startsWith("PV-"))
                .filter(number -> DESK.rooms()
                        .kit(RoomsBook.FIRST)
                        .bill()
                        .all()
                        .noneMatch(item -> item.part().number().text().equals(number)))
                .findFirst()
                .orElseThrow();
        go("/engineering/why?order=" + RoomsBook.FIRST + "&part=" + absent);
        assertThat(page.locator("h1")).hasText("What would bring " + absent + " into " + RoomsBook.FIRST);
        assertThat(page.locator(".next")).containsText("not in the kit");
    }

    @Test
    @DisplayName(
            "read every part of the catalogue, some at a time, and are told what to do where no part has the words")
    void all_parts() {
        go("/engineering");
        int all = OpenDesk.catalogue().parts().size();
        assertThat(page.locator(".stretch")).containsText("1 to 200 of " + all);
        page.getByText("Those after").click();
        assertThat(page.locator(".stretch")).containsText("201 to 400 of " + all);
        go("/engineering?words=teapot");
        assertThat(page.locator("main")).containsText("0 parts. Try fewer words");
        assertThat(page.locator("tbody")).hasCount(0);
    }

    @Test
    @DisplayName("go from what is short and what waits to the page on which it is done")
    void onward() {
        go("/office");
        assertThat(page.locator("[aria-label='What is short'] td a").first())
                .hasAttribute("href", Pattern.compile("/sales/order/BL-100[14]"));
        page.getByText("Work on " + RoomsBook.FIRST + " has not begun.").click();
        assertThat(page.locator("h1")).hasText("To test and to ship");
        assertThat(page.locator("th[scope=col]").filter(new Locator.FilterOptions().setHasText("Kit")))
                .hasCount(1);
    }

    @Test
    @DisplayName("recall a lot, and are told where nothing was asked or found")
    void recall() {
        go("/engineering/recall?lot=L-NONE");
        assertThat(page.locator("h2").first()).hasText("0 kits");
        go("/engineering/recall?part=" + PART);
        assertThat(page.locator("h2").first()).hasText("2 kits");
    }

    @Test
    @DisplayName("ask for a lot by keyboard, and are told the kit, its customer and its state; of another lot none")
    void recall_asked() {
        PickLine line = DESK.rooms().lines(RoomsBook.FIRST).stream()
                .filter(each ->
                        each.part().tracked() == Tracked.LOT && each.left().signum() > 0)
                .reduce((first, last) -> last)
                .orElseThrow();
        String part = line.part().number().text();
        Taken taken = new Taken(part, line.finish(), null, "L-" + part, List.of(), "", "", "");
        assertThat(new PickDesk(DESK.book(), OpenDesk.by())
                        .take(DESK.rooms().kit(RoomsBook.FIRST), List.of(taken), "")
                        .faults())
                .isEmpty();
        go("/engineering/recall");
        tabTo(page.locator("#lot"));
        type("L-" + part);
        press("Enter");
        assertThat(page.locator("h2").first()).hasText("1 kit");
        assertThat(page.locator("tbody tr").first()).containsText(RoomsBook.FIRST);
        assertThat(page.locator("tbody tr").first()).containsText("Orchard Lane Bakery");
        page.locator("#lot").fill("L-" + part + "-2");
        button("Which kits?").click();
        assertThat(page.locator("h2").first()).hasText("0 kits");
    }

    @Test
    @DisplayName("read who did what, of all and of one order")
    void journal() {
        go("/office");
        page.getByText("Journal", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.locator("tbody tr").first()).containsText("Kim Aster");
        page.locator("input[name=order]").fill(RoomsBook.SECOND);
        press("Enter");
        assertThat(page.locator("h1")).hasText("Journal of " + RoomsBook.SECOND);
        assertThat(page.locator("tbody tr").first()).containsText("order " + RoomsBook.SECOND);
        assertThat(page.locator("tbody tr").filter(new Locator.FilterOptions().setHasNotText(RoomsBook.SECOND)))
                .hasCount(0);
        page.locator("input[name=order]").fill("BL-NONE");
        press("Enter");
        assertThat(page.locator("main")).containsText("Nothing is written down of BL-NONE");
    }

    @Test
    @DisplayName("find a person, hand out what is held, and erase it with a reason on a page that says what that means")
    void person() {
        new PersonDesk(DESK.book(), OpenDesk.by()).add("Rowan Ashby", "");
        new OrderDesk(DESK.book(), OpenDesk.by())
                .issue(RoomsBook.SECOND, new TreeMap<>(Map.of("bill, for ashby", "0")));
        go("/office/persons");
        page.locator("input[name=words]").fill("ashby");
        press("Enter");
        page.locator("tbody a").first().click();
        assertThat(page.locator("h1")).hasText("Rowan Ashby");
        Download held = page.waitForDownload(() ->
                button("Save all that is held of this person, to hand it out").click());
        assertThat(new String(read(held.path()), StandardCharsets.UTF_8)).contains("Rowan Ashby");
        page.getByText("Erase it").click();
        assertThat(page.locator("main")).containsText("erased for good");
        assertThat(page.locator("h2").first()).containsText("The name stays in what others typed: 1 entry");
        button("Erase what is held of Rowan Ashby").click();
        assertThat(page.locator("#why-reason")).containsText("Why: found nothing");
        page.locator("#reason").fill("left the workshop, asked for it");
        button("Erase what is held of Rowan Ashby").click();
        assertThat(page.locator(".told")).containsText("erased");
        assertThat(page.locator("main")).not().containsText("Rowan Ashby");
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    @DisplayName("see what an edited catalogue changes, and which orders it touches")
    void edit() throws IOException {
        for (String elsewhere :
                List.of(folder.toString(), "target/none", "/", "..", "//127.0.0.1/share", "a\\u0000b")) {
            go("/engineering/edit");
            page.locator("#folder").fill(elsewhere);
            button("Look").click();
            assertThat(page.locator(".refused")).containsText("the folder of an edited catalogue");
        }
        assertThat(page.locator("main")).containsText("such as catalog-edited");
        folder = Files.createTempDirectory(Path.of("target").toAbsolutePath(), "edited");
        copy(Path.of("catalog"));
        Path fixings = folder.resolve("parts/common-fixings.json");
        String text = Files.readString(fixings);
        int at = text.indexOf("\"part\": \"" + PART + "\"");
        int revision = text.indexOf("\"revision\": \"", at) + "\"revision\": \"".length();
        Files.writeString(fixings, text.substring(0, revision) + "Z" + text.substring(text.indexOf('"', revision)));

        page.locator("#folder").fill(folder.toString());
        button("Look").click();
        assertThat(page.locator("main")).containsText("another revision (Z, was");
        assertThat(page.locator("tbody")).containsText(RoomsBook.FIRST);

        Path link = Files.createSymbolicLink(folder.resolve("orders/out"), Path.of("/etc"));
        button("Look").click();
        assertThat(page.locator(".refused")).containsText("without links that lead out");
        Files.delete(link);
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    private void copy(Path from) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path to = folder.resolve(from.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(each, to);
                }
            }
        }
    }

    @Test
    @DisplayName("read the morning's list, with the month's margin that the quotations give")
    void morning() {
        go("/office");
        assertThat(page.locator(".next")).containsText("2 orders are owed: 0 late");
        assertThat(page.locator("h2")).hasText(new String[] {
            "Late", "Due within two weeks", "Short", "Waiting", "Ordered this month, and what it leaves above full cost"
        });
        assertThat(page.locator("[aria-label='Margin by kit'] tbody tr")).hasCount(1);
        assertThat(page.locator("[aria-label='Margin by kit'] tbody")).not().containsText("100.0 %");
    }

    @Test
    @DisplayName("see the load of the weeks drawn, and the same in figures")
    void load() {
        go("/office/load");
        assertThat(page.locator(".drawing svg").first()).isVisible();
        assertThat(page.locator(".sheet table").first()).isVisible();
    }

    /** Weeks as ISO 8601 counts them; work begins on the next day that is worked. */
    @Test
    @DisplayName("see no week of the load that is past, on the day's clock of the desk")
    void load_begins_this_week() {
        LocalDate today = OpenDesk.by().today();
        List<Integer> soon = IntStream.rangeClosed(0, 5)
                .mapToObj(today::plusDays)
                .map(day -> day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR))
                .toList();
        go("/office/load");
        List<String> said = page.locator(".drawing svg").first().locator("text").allTextContents();
        int week = said.stream()
                .filter(text -> text.matches("\\d{1,2}"))
                .mapToInt(Integer::parseInt)
                .findFirst()
                .orElseThrow();
        assertThat(week).isIn(soon);
    }
}

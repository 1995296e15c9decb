package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.Subject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An order from the first call to the confirmed quotation")
class SalesInBrowserTest extends InBrowser {

    private static final int MOST_QUESTIONS = 30;

    @TempDir
    private Path folder;

    private OpenDesk desk = null;

    @BeforeEach
    void openDesk() {
        desk = OpenDesk.at(folder);
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    @Override
    OpenDesk desk() {
        return desk;
    }

    private void begin(Page page, String number, String family, String built) {
        page.navigate(desk.page("/sales/new").toString());
        page.getByLabel("Customer").fill("Ann Gable");
        page.getByLabel("Kit", new Page.GetByLabelOptions().setExact(true)).selectOption(family);
        page.getByLabel("Base vehicle built").fill(built);
        page.getByLabel("Order number").fill(number);
        press(page, "Begin the order");
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    private void settleAll(Page page) {
        for (int i = 0; i < MOST_QUESTIONS && page.locator("#asks").count() > 0; i++) {
            // The first answer; of a question with several none.
            page.locator("section.question form button").first().click();
        }
        if (page.locator("#wants").count() > 0) {
            page.locator("#wants ~ form input[type=radio]").all().stream()
                    .limit(1)
                    .forEach(Locator::check);
            page.locator("#wants ~ form input[type=text]").all().forEach(measure -> measure.fill("510"));
            press(page, "Keep");
        }
    }

    private long entries(String order) {
        return desk.book()
                .read(reading -> reading.journal().of(new Subject(OrderHappening.WHAT, order)))
                .size();
    }

    private OrderState state(String order) {
        return desk.book()
                .read(reading -> reading.orders().find(order).orElseThrow().state());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pannier-van", "stook-pickup"})
    @DisplayName("goes by keyboard alone from the build year to a quotation, within two minutes")
    void by_keyboard(String family) {
        Instant begun = Instant.now();
        open("/sales/new");
        // The first field has the keyboard already.
        page().keyboard().type("Ann Gable");
        page().keyboard().press("Tab");
        page().keyboard().type(family.equals("pannier-van") ? "O" : "T");
        page().keyboard().press("Tab");
        page().keyboard().type("1956");
        page().keyboard().press("Tab");
        page().keyboard().type("K-100");
        page().keyboard().press("Enter");
        assertThat(page().locator("h1")).hasText("K-100");

        for (int i = 0; i < MOST_QUESTIONS && page().locator("#asks").count() > 0; i++) {
            String asked = page().locator("#asks").textContent();
            assertThat(page().locator("#asks")).isFocused();
            page().keyboard().press("Tab");
            page().keyboard().press("Enter");
            assertThat(page().locator("section.question", new Page.LocatorOptions().setHasText(asked)))
                    .hasCount(0);
        }
        if (page().locator("#wants").count() > 0) {
            for (Locator choice : page().locator("section.question fieldset").all()) {
                choice.locator("input").first().focus();
                page().keyboard().press("Space");
            }
            for (Locator measure :
                    page().locator("section.question input[type=text]").all()) {
                measure.focus();
                page().keyboard().type("510");
            }
            page().keyboard().press("Enter");
        }
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Quote it as version 1"))
                .focus();
        page().keyboard().press("Enter");

        assertThat(page().locator("#versions")).isVisible();
        assertThat(state("K-100")).isEqualTo(OrderState.QUOTED);
        assertThat(Duration.between(begun, Instant.now())).isLessThan(Duration.ofMinutes(2));
    }

    @Test
    @DisplayName("says before an answer what it changes, and after it what the order comes to")
    void figures() {
        begin(page(), "A-1", "pannier-van", "1968");

        assertThat(page().locator(".settled")).containsText("Middle body, July 1965 to 1971, from the date.");
        assertThat(page().locator("#asks")).hasText("On which side does the driver sit?");
        String before = page().locator(".foot dd").first().textContent();
        Locator right = page().locator("table.answers tr", new Page.LocatorOptions().setHasText("Right-hand drive"));
        assertThat(right).containsText("North America");
        String more = right.locator("td.number").first().textContent();
        press(page(), "Right-hand drive");

        assertThat(page().locator(".settled")).containsText("Right-hand drive.");
        String after = page().locator(".foot dd").first().textContent();
        assertThat(amount(after) - amount(before)).isEqualTo(amount(more));
    }

    private static double amount(String said) {
        return Double.parseDouble(said.replace("EUR ", "").replace(",", "").replace('\u2212', '-'));
    }

    @Test
    @DisplayName("says why an answer is closed and what would open it; one click changes it so")
    void closed() {
        begin(page(), "A-1", "pannier-van", "1968");
        press(page(), "Left-hand drive");
        page().navigate(desk.page("/sales/order/A-1?ask=market").toString());
        Locator closed =
                page().locator(".closed li", new Page.LocatorOptions().setHasText("United Kingdom: not available"));
        assertThat(closed).containsText("because Left-hand drive is chosen");
        assertThat(closed).containsText("Right-hand drive instead of Left-hand drive");
        closed.getByRole(AriaRole.BUTTON).first().click();

        assertThat(page().locator(".settled")).containsText("United Kingdom.");
        assertThat(page().locator(".settled")).containsText("Right-hand drive");
    }

    @Test
    @DisplayName(
            "answers one question with two quick clicks, and none with the key for the next line pressed once more")
    void twice() {
        begin(page(), "A-1", "pannier-van", "1968");
        long before = entries("A-1");
        String first = page().locator("#asks").textContent();
        page().locator("button.answer").first().dblclick();
        assertThat(page().locator("#asks")).not().hasText(first);
        String second = page().locator("#asks").textContent();
        page().keyboard().press("Enter");
        page().keyboard().press("Enter");

        assertThat(page().locator("#asks")).hasText(second);
        assertThat(entries("A-1")).isEqualTo(before + 1);
    }

    @Test
    @DisplayName("shows of a settled question nothing more for what it is, and the others against it")
    void settled_again() {
        begin(page(), "A-1", "pannier-van", "1968");
        Locator dear = page().locator("table.answers tr", new Page.LocatorOptions().setHasText("Right-hand drive"));
        String more = dear.locator("td.number").first().textContent();
        press(page(), "Right-hand drive");
        page().navigate(desk.page("/sales/order/A-1?ask=drive-side").toString());
        Locator other = page().locator("table.answers tr", new Page.LocatorOptions().setHasText("Left-hand drive"));

        assertThat(dear).containsText("as it is");
        assertThat(dear.locator("td.number")).hasText(new String[] {"0.00", "0.0", "0"});
        assertThat(amount(other.locator("td.number").first().textContent())).isEqualTo(-amount(more));
    }

    @Test
    @DisplayName("takes changes back one after the other, and the first taking down is where it ends")
    void undo() {
        begin(page(), "A-1", "pannier-van", "1968");
        String first = page().locator("#asks").textContent();
        press(page(), "Right-hand drive");
        page().locator("button.answer").first().click();
        press(page(), "Take the last change back");
        press(page(), "Take the last change back");

        assertThat(page().locator("#asks")).hasText(first);
        assertThat(page().getByText("Take the last change back")).hasCount(0);
    }

    @Test
    @DisplayName("is told to the second of two people on one draft, and nothing of it is lost")
    void two_people() {
        begin(page(), "A-1", "pannier-van", "1968");
        Page other = another(new Browser.NewContextOptions());
        other.navigate(desk.page("/sales/order/A-1").toString());
        press(page(), "Right-hand drive");
        assertThat(page().locator(".settled")).containsText("Right-hand drive.");
        press(other, "Left-hand drive");

        assertThat(other.getByRole(AriaRole.ALERT)).containsText("Kim Aster at front desk has changed meanwhile");
        assertThat(other.locator(".settled")).containsText("Right-hand drive.");
    }

    @Test
    @DisplayName("goes on after the desk was started anew, with the page that was open before")
    void restart() {
        begin(page(), "A-1", "pannier-van", "1968");
        int port = desk.address().getPort();
        desk.close();
        desk = OpenDesk.at(folder, port);
        press(page(), "Right-hand drive");

        assertThat(page().locator(".settled")).containsText("Right-hand drive.");
    }

    @Test
    @DisplayName("keeps an answer once whose connection was cut before it was told, however often it is sent")
    void cut_connection() {
        begin(page(), "A-1", "pannier-van", "1968");
        long before = entries("A-1");
        page().route("**/answer", route -> {
            route.fetch();
            route.abort();
        });
        page().locator("button.answer").last().click();
        page().waitForCondition(() -> entries("A-1") == before + 1);
        page().unroute("**/answer");
        // What a browser shows then is that there was no answer; reloading sends the form once more.
        page().reload();

        assertThat(page().locator("h1")).hasText("A-1");
        assertThat(entries("A-1")).isEqualTo(before + 1);
    }

    @Test
    @DisplayName("is quoted in versions with what differs, then confirmed and frozen")
    void versions() {
        begin(page(), "A-1", "pannier-van", "1973");
        settleAll(page());
        press(page(), "Quote it as version 1");
        page().navigate(desk.page("/sales/order/A-1?ask=colour").toString());
        page().locator("button.answer").last().click();
        press(page(), "Quote it as version 2");
        page().getByText("What changed from version 1").click();

        assertThat(page().locator("main")).containsText("Which colour for cradle, mounts and pedals? ");
        page().getByText("Back to the order").click();
        page().getByText("The customer orders version 2").click();
        assertThat(page().locator(".facts")).containsText("no day is agreed");
        assertThat(page().locator(".caution")).hasCount(0);
        assertThat(state("A-1")).isEqualTo(OrderState.QUOTED);
        press(page(), "Yes, the customer orders version 2");

        assertThat(page().locator(".facts").first()).containsText("ordered");
        assertThat(state("A-1")).isEqualTo(OrderState.ORDERED);
        assertThat(page().locator("button")).hasCount(1);
        press(page(), "Copy it as another order");

        assertThat(page().locator("h1")).hasText("A-2");
        assertThat(state("A-2")).isEqualTo(OrderState.DRAFT);
        assertThat(state("A-1")).isEqualTo(OrderState.ORDERED);
    }

    @Test
    @DisplayName("cannot be ordered while some trade has a Stop of it, which the card tells")
    void held() {
        desk.withDemo();
        open("/sales/order/BL-1003");
        assertThat(page().getByText("The customer orders version 1")).hasCount(1);

        open("/sales/order/BL-1002");
        assertThat(page().locator(".holds")).containsText("A Stop of 'ship'");
        assertThat(page().getByText("The customer orders version 1")).hasCount(0);
    }

    @Test
    @DisplayName("stands beside another one, with what differs in choices, price and parts")
    void side_by_side() {
        begin(page(), "A-1", "stook-pickup", "1956");
        settleAll(page());
        press(page(), "Copy it as another order");
        assertThat(page().locator("h1")).hasText("A-2");
        open("/sales/order/A-2?ask=colour");
        page().locator("button.answer").last().click();
        open("/sales/compare");
        page().getByLabel("One order").fill("A-1");
        page().getByLabel("The other").fill("A-2");
        press(page(), "Compare");

        assertThat(page().locator("tr.differs", new Page.LocatorOptions().setHasText("Which colour")))
                .containsText("Frame parts deep green");
        page().locator("summary").click();
        assertThat(page().locator("details")).containsText("green");
    }

    @Test
    @DisplayName("shows what was typed as text, whatever it is, and refuses what cannot be kept")
    void hostile() {
        String hostile = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";
        page().onDialog(dialog -> {
            throw new AssertionError("script ran: " + dialog.message());
        });
        open("/sales/new");
        page().getByLabel("Customer").fill(hostile);
        page().getByLabel("Base vehicle built").fill(hostile.substring(0, 30));
        page().getByLabel("Order number").fill("../../" + hostile.substring(0, 20));
        page().getByLabel("Due").fill(hostile.substring(0, 30));
        press(page(), "Begin the order");

        assertThat(page().getByRole(AriaRole.ALERT)).containsText("Nothing was changed");
        assertThat(page().getByLabel("Customer")).hasValue(hostile);
        page().getByLabel("Base vehicle built").fill("1968");
        page().getByLabel("Order number").fill("A-1");
        page().getByLabel("Due").fill("");
        press(page(), "Begin the order");

        assertThat(page().locator(".facts").first()).containsText(hostile);
        assertThat(page().locator("main script, main img")).hasCount(0);
    }
}

package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Every room of the desk, in a browser")
class DeskInBrowserTest extends InBrowser {

    @TempDir
    private static Path folder;

    private static OpenDesk desk = null;

    @BeforeAll
    static void open() {
        desk = OpenDesk.at(folder).withDemo();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @Override
    OpenDesk desk() {
        return desk;
    }

    @Test
    @DisplayName("has a first page that is found by its name, and asks nothing of another host")
    void first_page() {
        for (String room : List.of("Sales", "Stores", "Fabrication", "Bench and shipping", "Engineering", "Office")) {
            open("/");
            page().getByRole(AriaRole.NAVIGATION)
                    .getByText(room, new Locator.GetByTextOptions().setExact(true))
                    .click();

            assertThat(page().locator("h1")).isVisible();
            assertThat(page().locator("nav a[aria-current]")).hasText(room);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = ColorScheme.class,
            names = {"LIGHT", "DARK"})
    @DisplayName("is readable for people and programs that read aloud (WCAG 2.2 AA, as far as axe-core sees)")
    void accessible(ColorScheme scheme) {
        as(new Browser.NewContextOptions().setColorScheme(scheme));
        for (String path : List.of(
                "/sales",
                "/sales/new",
                "/sales/order/BL-1001",
                "/sales/order/BL-1004",
                "/sales/order/BL-1004?ask=inlet",
                "/sales/order/BL-1004/head",
                "/sales/order/BL-1004/opening?option=inlet&value=j3400",
                "/sales/compare?one=BL-1001&other=BL-1002",
                "/stores",
                "/fabrication",
                "/bench",
                "/engineering",
                "/office",
                "/none")) {
            open(path);

            assertThat(violations()).as(path).isEmpty();
        }
    }

    @Test
    @DisplayName(
            "finds an order by its number in small letters, a word of its customer, or its chassis; says what it could not")
    void found() {
        open("/sales");
        page().getByLabel("Order, customer or chassis number").fill("florist");
        page().keyboard().press("Enter");
        assertThat(page().locator("main tbody tr")).hasCount(2);
        assertThat(page().locator("main")).containsText("2 orders go by 'florist'");
        page().locator("#order").fill("PV 742 01183");
        page().keyboard().press("Enter");
        assertThat(page().locator("main tbody tr")).hasCount(1);
        assertThat(page().locator("main tbody")).containsText("BL-1001");
        page().locator("#order").fill("tulip");
        page().keyboard().press("Enter");
        assertThat(page().locator("main")).containsText("No order, customer or chassis number goes by 'tulip'");
        assertThat(page().locator("main tbody")).hasCount(0);
        assertThat(page().locator("#order")).hasValue("tulip");
        page().locator("#order").fill("bl-1003");
        page().keyboard().press("Enter");
        assertThat(page().locator("h1")).hasText("BL-1003");
    }

    @Test
    @DisplayName("tells why a part is in an order that is still open, as of one that is frozen")
    void why() {
        open("/engineering/part?part=CI-T1");
        page().locator("a[href*='/engineering/why?order=BL-1004']").click();
        assertThat(page().locator("h1")).hasText("Why CI-T1 is in BL-1004");
        assertThat(page().locator(".ways")).containsText("Proof of Ockmere Pannier");
    }

    @Test
    @DisplayName("shows the orders of one state, shipped ones too, which are not in hand any more")
    void of_a_state() {
        open("/sales");
        page().getByLabel("Show").selectOption("quoted");
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Look"))
                .click();
        assertThat(page().locator("main tbody tr td:nth-of-type(3)").allTextContents())
                .hasSize(3)
                .containsOnly("quoted");
        page().getByLabel("Show").selectOption("shipped");
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Look"))
                .click();
        assertThat(page().locator("main")).containsText("No order is shipped.");
    }

    @Test
    @DisplayName("does without script")
    void without_script() {
        as(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        open("/sales");

        assertThat(page().locator("table")).containsText("BL-1001");
    }

    @Test
    @DisplayName("needs no scrolling sideways on a tablet or at 200 % zoom")
    void narrow() {
        for (int width : List.of(820, 640, 400)) {
            as(new Browser.NewContextOptions().setViewportSize(width, 900));
            for (String path : List.of("/sales", "/sales/order/BL-1004?ask=inlet", "/stores", "/office")) {
                open(path);

                assertThat((int) page().evaluate("document.documentElement.scrollWidth"))
                        .as(path + " at " + width)
                        .isLessThanOrEqualTo(width);
            }
        }
    }

    @Test
    @DisplayName("shows each sheet of an order as a page that prints, with the same as files beside it")
    void sheets() throws IOException {
        open("/sheets/BL-1002");
        List<String> sheets = page().locator("main th a").all().stream()
                .map(link -> link.getAttribute("href"))
                .toList();
        assertThat(sheets).hasSizeGreaterThan(12).contains("/sheets/BL-1002/bill", "/sheets/BL-1002/quotation");
        for (String sheet : sheets) {
            assertThat(page().request().get(desk.page(sheet).toString()).text())
                    .as(sheet)
                    .contains("<h1>", "</main>");
        }
        // All are written by one writer: these hold every kind of block that it knows.
        for (String sheet : List.of("bill", "quotation", "end-of-line-test", "cutting-list")) {
            open("/sheets/BL-1002/" + sheet);
            assertThat(violations()).as(sheet).isEmpty();
        }
        open("/sheets/BL-1002/quotation");
        byte[] pdf = page().pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
        try (PDDocument printed = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(printed);
            assertThat(text).contains("BL-1002").doesNotContain("All sheets of");
            // A4 (ISO 216), in points.
            assertThat(printed.getPage(0).getMediaBox().getWidth()).isBetween(594f, 597f);
        }
        String file = page().locator("a[download]").first().getAttribute("href");
        byte[] workbook = page().request().get(desk.page(file).toString()).body();
        assertThat(new String(workbook, 0, 2, StandardCharsets.US_ASCII)).isEqualTo("PK");
    }

    @Test
    @DisplayName("says why an order has no sheets yet")
    void no_sheets() {
        open("/sheets/BL-1009");

        assertThat(page().locator("main")).containsText("This order has no sheets yet");
    }
}

package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("At the bench")
class BenchJourneyTest extends RoomInBrowser {

    private static final String TEST = "/bench/test/" + RoomsBook.SECOND;

    /** A limit of bonding: UN Regulation No. 100, 5.1.3, asks for less than 0.1 ohm (from memory). */
    private static final Pattern BELOW = Pattern.compile("0\\.1 ");

    @Test
    @DisplayName("a value is judged as it is typed, and a retest keeps the reading that it replaces; by keyboard alone")
    void tested() {
        go(TEST);
        Locator row = page.locator("tr[hx-get]")
                .filter(new Locator.FilterOptions().setHas(page.locator("input[name=value]")))
                .first();
        String key = row.getAttribute("hx-get");
        String meter = row.getAttribute("hx-include").replaceFirst(".*, ", "");
        tabTo(page.locator(meter));
        type("SN-1");
        Locator value = row.locator("input[name=value]").first();
        value.focus();
        type("999999");
        press("Tab");
        assertThat(row.locator(".judged")).containsText("NOT passed");
        press("Enter");
        assertThat(page.locator("h1")).hasText("Test " + RoomsBook.SECOND);
        assertThat(row.locator(".judged")).containsText("NOT passed");
        assertThat(page.locator("main")).not().containsText("Kept until now");
        assertThat(sign())
                .containsText(Pattern.compile("^Sign as Kim Aster and keep the record: 1 of \\d+ values read"));
        sign().focus();
        press("Enter");
        assertThat(page.locator("h1")).containsText("Test report of " + RoomsBook.SECOND);
        assertThat(page.locator(".told")).containsText("of test");

        go(TEST);
        row = page.locator("tr[hx-get='" + key + "']");
        assertThat(row).containsText("until now 999999");
        assertThat(page.locator(meter)).hasValue("SN-1");
        value = row.locator("input[name=value]").first();
        value.fill("0.01");
        press("Tab");
        assertThat(row.locator(".judged")).not().containsText("999999");
        button("Judge all, keep nothing yet").click();
        assertThat(page.locator("tr[hx-get='" + key + "']")).containsText("until now 999999");
        sign().click();
        go(TEST);
        assertThat(page.locator("tr[hx-get='" + key + "']")).containsText("replaced: 999999 (Kim Aster");
        assertThat(page.locator("main")).containsText("signed by Kim Aster");
    }

    @Test
    @DisplayName("a record is signed by people whom the book knows, and never empty")
    void signed() {
        go(TEST);
        assertThat(sign()).hasCount(0);
        button("Judge all, keep nothing yet").click();
        assertThat(page.locator(".refused")).containsText("nothing filled in");
        page.locator("input[name=value]").first().fill("0.02");
        page.locator("#who").fill("Nobody Known");
        button("Judge all, keep nothing yet").click();
        page.locator("input[name=value]").nth(1).fill("0.02");
        sign().click();
        assertThat(page.locator(".refused")).containsText("'Nobody Known'");
        assertThat(page.locator(".refused")).containsText("2 typed");
    }

    private Locator sign() {
        return page.locator("button[formaction='" + TEST + "']");
    }

    @Test
    @DisplayName("a bad value that is typed over a good one turns to not passed before anything is kept")
    void bad_over_good() {
        go(TEST);
        Locator row = page.locator("tr[hx-get]")
                .filter(new Locator.FilterOptions()
                        .setHas(page.locator("td", new Page.LocatorOptions().setHasText(BELOW))))
                .first();
        String meter = row.getAttribute("hx-include").replaceFirst(".*, ", "");
        page.locator(meter).fill("SN-2");
        Locator value = row.locator("input[name=value]").first();
        value.fill("0.05");
        press("Tab");
        assertThat(row.locator(".judged")).hasText("passed");
        button("Judge all, keep nothing yet").click();
        sign().click();
        assertThat(page.locator("h1")).containsText("Test report of");

        go(TEST);
        assertThat(row.locator(".judged")).hasText("passed");
        value.fill("5");
        press("Tab");
        assertThat(row.locator(".judged")).containsText("NOT passed");
    }

    @Test
    @DisplayName("crates are drawn, and a kit that is not picked, packed and tested does not leave")
    void ship() {
        go("/bench/ship/" + RoomsBook.SECOND);
        assertThat(page.locator(".drawing svg").first()).isVisible();
        assertThat(button(RoomsBook.SECOND + " leaves")).hasCount(0);
        Locator missing = page.locator("[aria-label='What is missing']");
        assertThat(missing).containsText("Nobody works on it yet.");
        tabTo(missing.locator("a", new Locator.LocatorOptions().setHasText("Begin it")));
        press("Enter");
        button("Work on " + RoomsBook.SECOND + " begins").click();
        assertThat(page.locator(".told")).containsText("to in work");
        go("/bench/pack/" + RoomsBook.SECOND);
        page.locator("#crates").fill("2");
        button("The kit lies in its crates").click();
        assertThat(page.locator(".refused")).containsText("picking nobody has called complete");
        page.locator("input[name=counted]").first().fill("1");
        button("Keep the counts").click();
        assertThat(page.locator(".told")).containsText("bag counted");
    }

    @Test
    @DisplayName("what keeps a kit here is told by name, each with the page on which it is done, and nothing by a code")
    void kept_here() {
        go("/bench/ship/" + RoomsBook.FIRST);
        Locator missing = page.locator("[aria-label='What is missing']");
        assertThat(missing).containsText(Pattern.compile("BM-[A-Z0-9]+ [A-Z][a-z]+ [^:]+ rev\\. [A-Z]: 0 of"));
        assertThat(page.locator("main")).not().containsText("mass near market limit (market)");
        List<String> ways = page.locator(".rows a").all().stream()
                .map(way -> way.getAttribute("href"))
                .toList();
        assertThat(ways)
                .contains(
                        "/stores/pick?order=" + RoomsBook.FIRST,
                        "/bench/pack/" + RoomsBook.FIRST,
                        "/bench/test/" + RoomsBook.FIRST,
                        "#checks");
        assertThat(page.locator("#checks")).hasText("To be checked");
        for (String way : ways) {
            assertThat(page.request().get(DESK.page(way).toString()).status())
                    .as(way)
                    .isEqualTo(200);
        }
    }
}

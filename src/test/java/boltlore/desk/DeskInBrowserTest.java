package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Every room of the desk, in a browser")
class DeskInBrowserTest {

    @TempDir
    private static Path folder;

    private static OpenDesk desk = null;

    private final List<String> asked = new ArrayList<>();
    private BrowserContext context = null;
    private Page page = null;

    @BeforeAll
    static void open() {
        desk = OpenDesk.at(folder).withDemo();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @BeforeEach
    void begin() {
        show(new Browser.NewContextOptions());
    }

    private void show(Browser.NewContextOptions options) {
        if (context != null) {
            context.close();
        }
        context = Browsers.chromium().newContext(options);
        page = context.newPage();
        page.onRequest(request -> asked.add(request.url()));
    }

    @AfterEach
    void end() {
        context.close();
        assertThat(desk.log()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sales", "Stores", "Fabrication", "Bench and shipping", "Engineering", "Office"})
    @DisplayName("has a first page that is found by its name, and asks nothing of another host")
    void first_page(String room) {
        page.navigate(desk.address().toString());
        page.getByRole(AriaRole.NAVIGATION)
                .getByText(room, new com.microsoft.playwright.Locator.GetByTextOptions().setExact(true))
                .click();

        assertThat(page.locator("h1")).isVisible();
        assertThat(page.locator("nav a[aria-current]")).hasText(room);
        assertThat(asked)
                .isNotEmpty()
                .allMatch(url -> url.startsWith(desk.address().toString()) || url.startsWith("data:"));
    }

    @ParameterizedTest
    @EnumSource(
            value = ColorScheme.class,
            names = {"LIGHT", "DARK"})
    @DisplayName("is readable for people and programs that read aloud (WCAG 2.2 AA, as far as axe-core sees)")
    void accessible(ColorScheme scheme) {
        show(new Browser.NewContextOptions().setColorScheme(scheme));
        for (String path : List.of("/sales", "/stores", "/fabrication", "/bench", "/engineering", "/office", "/none")) {
            page.navigate(desk.page(path).toString());

            assertThat(violations()).as(path).isEmpty();
        }
    }

    private List<String> violations() {
        return new AxeBuilder(page)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                        .analyze()
                        .getViolations()
                        .stream()
                        .map(rule -> rule.getId() + ": " + rule.getHelp() + " " + where(rule))
                        .toList();
    }

    private static String where(Rule rule) {
        return rule.getNodes().isEmpty() ? "" : rule.getNodes().get(0).getHtml();
    }

    @Test
    @DisplayName("does without script")
    void without_script() {
        show(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(desk.page("/sales").toString());

        assertThat(page.locator("table")).containsText("BL-1001");
    }
}

package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** Somebody at a browser, who is anew for each test; nothing that it asks may leave the desk. */
abstract class InBrowser {

    /** These machines do many things at once. */
    private static final double PATIENCE_MS = 30_000;

    private final List<String> asked = new ArrayList<>();
    private final List<BrowserContext> contexts = new ArrayList<>();
    private Page page = null;

    /** The desk that they are at. */
    abstract OpenDesk desk();

    @BeforeEach
    void begin() {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        page = another(new Browser.NewContextOptions());
    }

    /** Goes on as somebody else, or in another light. */
    void as(Browser.NewContextOptions options) {
        page = another(options);
    }

    /** Another browser beside this one. */
    Page another(Browser.NewContextOptions options) {
        BrowserContext context = Browsers.chromium().newContext(options);
        contexts.add(context);
        Page opened = context.newPage();
        opened.setDefaultTimeout(PATIENCE_MS);
        opened.onRequest(request -> asked.add(request.url()));
        return opened;
    }

    Page page() {
        return page;
    }

    Page open(String path) {
        page.navigate(desk().page(path).toString());
        return page;
    }

    @AfterEach
    void nothingLeftTheDeskAndNothingFailed() {
        contexts.forEach(BrowserContext::close);
        String here = "http://127.0.0.1:";
        assertThat(asked).isNotEmpty().allMatch(url -> url.startsWith(here) || url.startsWith("data:"));
        assertThat(desk().log()).isEmpty();
    }

    /** What stands in the way of somebody who does not see or cannot use a mouse, as far as a program finds it. */
    List<String> violations() {
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
}

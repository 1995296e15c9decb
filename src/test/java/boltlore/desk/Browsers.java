package boltlore.desk;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The browser of this machine, started once for all tests; nothing is downloaded. */
final class Browsers {

    private static final Path CHROMIUM = Stream.of(
                    "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
            .map(Path::of)
            .filter(Files::isExecutable)
            .findFirst()
            .orElseThrow(() -> new AssertionError("These tests need Chromium: apt-get install chromium"));

    private static final Browser ONE = start();

    private Browsers() {}

    private static Browser start() {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close, "closing the browser"));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        // In a container there is no user to fall back to, and little shared memory.
                        .setArgs(List.of("--no-sandbox", "--disable-dev-shm-usage")));
    }

    static Browser chromium() {
        return ONE;
    }
}

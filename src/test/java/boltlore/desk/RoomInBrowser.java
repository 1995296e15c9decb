package boltlore.desk;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;

/** What journeys through the rooms share: one desk with orders that are owed, and a browser of their own each. */
abstract class RoomInBrowser extends InBrowser {

    private static final int MOST_TABS = 120;

    /** Filled once: quoting and confirming takes longer than most journeys. */
    static final OpenDesk DESK = open();

    Page page = null;

    private static OpenDesk open() {
        try {
            Path folder = Files.createTempDirectory("boltlore-rooms");
            OpenDesk desk = OpenDesk.at(folder);
            desk.rooms().fill();
            desk.rooms().stock(RoomsBook.FIRST);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> close(desk, folder), "closing the desk"));
            return desk;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void close(OpenDesk desk, Path folder) {
        desk.close();
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    OpenDesk desk() {
        return DESK;
    }

    @BeforeEach
    void first() {
        page = page();
    }

    void show(Browser.NewContextOptions options) {
        as(options);
        page = page();
    }

    BrowserContext context() {
        return page.context();
    }

    Page go(String path) {
        return open(path);
    }

    Locator button(String says) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(says).setExact(true));
    }

    /** As somebody without a mouse comes there. */
    void tabTo(Locator target) {
        tabTo(target, "Tab");
    }

    /** @param key that goes on, or back */
    void tabTo(Locator target, String key) {
        for (int i = 0; i < MOST_TABS; i++) {
            if ((Boolean) target.evaluate("element => element === document.activeElement")) {
                return;
            }
            page.keyboard().press(key);
        }
        throw new AssertionError("Not reached by the keyboard: " + target);
    }

    void type(String text) {
        page.keyboard().type(text);
    }

    void press(String key) {
        page.keyboard().press(key);
    }
}

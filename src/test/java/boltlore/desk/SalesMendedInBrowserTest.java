package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.OrderState;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was answered wrongly, or has changed, and how it is put right. */
@DisplayName("An order of the demo in sales")
class SalesMendedInBrowserTest extends InBrowser {

    @TempDir
    static Path folder;

    /** Filled once: each test has an order of its own. */
    private static OpenDesk desk = null;

    @Override
    OpenDesk desk() {
        return desk;
    }

    @BeforeAll
    static void openDesk() {
        desk = OpenDesk.at(folder).withDemo();
    }

    @AfterAll
    static void closeDesk() {
        desk.close();
    }

    private Locator button(String says) {
        return page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(says));
    }

    private Locator tick(String says) {
        return page().getByRole(AriaRole.CHECKBOX, new Page.GetByRoleOptions().setName(says));
    }

    private OrderState state(String order) {
        return desk.book()
                .read(reading -> reading.orders().find(order).orElseThrow().state());
    }

    @Test
    @DisplayName(
            "whose answers contradict each other is repaired in one click, or one answer is left open and asked again")
    void contradictory() {
        open("/sales/order/BL-1006");
        assertThat(page().locator("main")).containsText("cannot be combined");
        button("Leave open: Air heater").click();
        assertThat(page().locator("main")).not().containsText("Air heater (PTC) cannot be combined");
        for (int i = 0;
                i < 5
                        && page().locator("#ways form").count() > 0
                        && page().locator("#settled").count() == 0;
                i++) {
            button("Change it so").first().click();
        }
        assertThat(page().locator("#settled")).isVisible();
        button("Take the last change back").click();
        button("Take the last change back").click();
        assertThat(page().locator("main")).containsText("Air heater (PTC) cannot be combined");
        assertThat(page().getByText("Take the last change back")).hasCount(0);
        button("Change it so").first().click();
        assertThat(page().locator("#settled")).isVisible();
    }

    @Test
    @DisplayName("that was changed after it was quoted says so, and goes back to what was quoted, but not past it")
    void changed_after_quoting() {
        open("/sales/order/BL-1003");
        assertThat(page().getByText("The customer orders version 1")).hasCount(1);
        assertThat(page().getByText("Take the last change back")).hasCount(0);
        open("/sales/order/BL-1003?ask=cover-colour");
        page().locator("table.answers tr:not(:has-text('as it is')) button.answer")
                .first()
                .click();
        assertThat(page().locator("main")).containsText("Version 1 was quoted of another draft");
        assertThat(page().getByText("The customer orders version 1")).hasCount(0);
        assertThat(page().locator("#versions ~ .rows, #versions + .rows").first())
                .containsText("says something else");
        assertThat(page().getByText("Take the last change back")).hasCount(1);
        button("Go back to what version 1 says").click();
        assertThat(page().getByText("The customer orders version 1")).hasCount(1);
        assertThat(page().locator("#versions + .rows")).containsText("says the same");
    }

    @Test
    @DisplayName("is not quoted before it is said what becomes of brackets that support nothing")
    void brackets() {
        open("/sales/order/BL-1002");
        assertThat(page().locator("#wants")).isVisible();
        assertThat(button("Quote it as version 2")).hasCount(0);
        page().locator("input[type=radio]").first().check();
        button("Keep").click();
        assertThat(page().locator("#wants")).hasCount(0);
        button("Quote it as version 2").click();
        assertThat(page().getByText("The customer orders version 2")).hasCount(1);
    }

    @Test
    @DisplayName("due on a day that is past is told as soon as it is typed in, and one due today is not")
    void due() {
        open("/sales/new");
        page().locator("#customer").fill("Ann Gable");
        page().locator("#number").fill("BL-7301");
        page().locator("#due").fill("2020-03-12");
        button("Begin the order").click();
        assertThat(page().locator("#why-due")).containsText("2020-03-12, which is past");
        page().locator("#due").fill(OpenDesk.by().today().toString());
        button("Begin the order").click();
        assertThat(page().locator("h1")).hasText("BL-7301");
    }

    @Test
    @DisplayName("whose change leaves a bracket that supports nothing says in the same form what becomes of it")
    void change_leaves_a_bracket() {
        open("/sales/order/BL-1001/change");
        assertThat(page().locator("#brackets")).hasValue("");
        page().locator("#option-air-conditioning").selectOption("no");
        page().locator("#brackets").selectOption("out");
        page().locator("#reason").fill("no air after all");
        button("Work out what it comes to").click();
        assertThat(page().locator("h2").first()).containsText("Change 1");
        button("Change 1 is accepted").click();
        assertThat(page().locator(".refused")).hasCount(0);
        assertThat(page().locator("h2").first()).containsText("accepted");
    }

    @Test
    @DisplayName("is given up with a reason, and a field that lacks it says so where the keyboard is")
    void lost() {
        open("/sales/order/BL-1005");
        page().getByText("The order is lost").click();
        button("BL-1005 is lost").click();
        assertThat(page().locator("#reason")).isFocused();
        assertThat(page().locator("#why-reason")).containsText("Why: found nothing");
        assertThat(violations()).isEmpty();
        page().locator("#reason").fill("too dear for them");
        button("BL-1005 is lost").click();
        assertThat(state("BL-1005")).isEqualTo(OrderState.LOST);
    }

    @Test
    @DisplayName("is asked all answers of a question with several at once, each ticked or not")
    void several() {
        open("/sales/order/BL-2001?ask=extras-work-lamp");
        assertThat(page().locator("#asks")).hasText("What else is fitted?");
        assertThat(page().locator("input[name=with]")).hasCount(3);
        tick("Work lamp above the load bed").setChecked(true);
        tick("Reversing alarm").setChecked(false);
        tick("12 V outlet in the cabin").setChecked(true);
        button("Those that are ticked, and no others").click();
        assertThat(page().locator("#settled")).isVisible();
        open("/sales/order/BL-2001?ask=extras-reversing-alarm");
        assertThat(tick("Work lamp above the load bed")).isChecked();
        assertThat(tick("Reversing alarm")).not().isChecked();
        assertThat(tick("12 V outlet in the cabin")).isChecked();
    }

    @Test
    @DisplayName("that nobody has taken down is said to be none")
    void none() {
        open("/sales/order/BL-9999");
        assertThat(page().locator("main")).containsText("There is no order 'BL-9999' in this book.");
    }
}

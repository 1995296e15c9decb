package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.stores.PickLine;
import boltlore.catalogue.Tracked;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("In the stores")
class StoresJourneyTest extends RoomInBrowser {

    private static PickLine left(Predicate<PickLine> which) {
        return DESK.rooms().lines(RoomsBook.FIRST).stream()
                .filter(line -> line.left().signum() > 0 && which.test(line))
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal leftOf(PickLine line) {
        return DESK.rooms().lines(RoomsBook.FIRST).stream()
                .filter(each -> each.key().equals(line.key()))
                .findFirst()
                .orElseThrow()
                .left();
    }

    @Test
    @DisplayName("an order is picked by keyboard and scanner alone, and completing it too soon is refused with why")
    void picked_with_a_scanner() {
        PickLine serial = left(line -> line.part().tracked() == Tracked.SERIAL);
        PickLine plain = left(line -> line.part().tracked() == null);
        go("/stores");
        press("Tab");
        tabTo(button("Pick these together"));
        press("Enter");
        assertThat(page.locator("h1")).containsText("Pick " + RoomsBook.FIRST);
        assertThat(page.locator("#code")).isFocused();

        type(serial.part().number().text() + "#1");
        press("Enter");
        assertThat(page.locator(".told")).containsText("serial " + serial.part().number() + "#1");
        assertThat(leftOf(serial)).isEqualByComparingTo(serial.left().subtract(BigDecimal.ONE));

        assertThat(page.locator("#code")).isFocused();
        type(plain.part().number().text());
        press("Enter");
        assertThat(page.locator(".told")).containsText("part " + plain.part().number());
        assertThat(leftOf(plain)).isZero();

        type("9-NOT-OURS");
        press("Enter");
        assertThat(page.locator(".refused")).containsText("Found '9-NOT-OURS'");

        tabTo(page.locator("a[href='#complete']"), "Shift+Tab");
        press("Enter");
        tabTo(button("Call " + RoomsBook.FIRST + " complete"));
        press("Enter");
        assertThat(page.locator(".refused")).containsText("parts on which safety hangs, not picked");
    }

    @Test
    @DisplayName("what is short is told with a reason, and what was taken by mistake goes back")
    void short_and_back() {
        PickLine line = left(each -> each.part().tracked() == null
                && each.part().number().text().startsWith("FX-")
                && each.left().compareTo(BigDecimal.ONE) > 0);
        String part = line.part().number().text();
        String path = "/stores/line?for=" + RoomsBook.FIRST + "&part=" + part + "&finish=";
        go(path);
        button("Say that " + line.left().toPlainString() + " " + line.part().unit() + " are short")
                .click();
        assertThat(page.locator(".refused")).containsText("What was found in the bin: found nothing");
        page.locator("#short-reason").fill("the box was empty");
        button("Say that " + line.left().toPlainString() + " " + line.part().unit() + " are short")
                .click();
        assertThat(page.locator(".facts")).containsText("Reported short");

        page.locator("#quantity").fill("1");
        button("Take it").click();
        assertThat(page.locator(".told")).containsText("part " + part);
        Locator back = page.locator("form[action='/stores/line/back']").first();
        back.locator("input[name=reason]").fill("wrong order");
        back.locator("button").click();
        assertThat(leftOf(line)).isEqualByComparingTo(line.left());
    }

    @Test
    @DisplayName("goods come in only with the numbers that are asked for, and not twice")
    void goods_in() {
        PickLine serial = left(line -> line.part().tracked() == Tracked.SERIAL);
        String part = serial.part().number().text();
        BigDecimal before = DESK.rooms().lying(part);
        go("/stores/receive?part=" + part);
        page.locator("#quantity").fill("1");
        button("Take it in").click();
        assertThat(page.locator(".refused")).containsText(part + ": found 0 different serial numbers");
        assertThat(page.locator("#quantity")).hasValue("1");

        page.locator("#serials").fill("IN-77");
        button("Take it in").click();
        assertThat(page.locator(".told")).containsText("serial IN-77");
        go("/stores/receive?part=" + part);
        page.locator("#serials").fill("IN-77");
        button("Take it in").click();
        assertThat(page.locator(".refused")).containsText("serial number IN-77, which came in before");
        assertThat(DESK.rooms().lying(part)).isEqualByComparingTo(before.add(BigDecimal.ONE));
    }

    @Test
    @DisplayName("who goes back to put a number right does not take the goods in twice, and takes the wrong one back")
    void back_and_corrected() {
        String part = OpenDesk.catalogue().parts().values().stream()
                .filter(each -> each.tracked() == null && each.unit().equals("each"))
                .map(each -> each.number().text())
                .filter(number -> DESK.rooms().lying(number).signum() == 0)
                .filter(number -> DESK.rooms().lines(RoomsBook.FIRST).stream()
                        .noneMatch(line -> line.part().number().text().equals(number)))
                .findFirst()
                .orElseThrow();
        BigDecimal before = DESK.rooms().lying(part);
        go("/stores/receive?part=" + part);
        page.locator("#quantity").fill("120");
        button("Take it in").click();
        assertThat(page.locator(".told")).containsText("quantity 120");
        page.goBack();
        page.locator("#quantity").fill("12");
        button("Take it in").click();
        assertThat(page.locator(".refused")).containsText("120 of " + part);
        assertThat(page.locator("#quantity")).hasValue("12");
        assertThat(DESK.rooms().lying(part)).isEqualByComparingTo(before.add(BigDecimal.valueOf(120)));

        Locator wrong = page.locator("form[action='/stores/receive/wrong']").first();
        wrong.locator("button").click();
        assertThat(page.locator(".refused")).containsText("What was wrong with it: found nothing");
        wrong = page.locator("form[action='/stores/receive/wrong']").first();
        wrong.locator("input[name=reason]").fill("a nought too many");
        wrong.locator("button").click();
        assertThat(page.locator(".told")).containsText("receipt taken back");
        assertThat(DESK.rooms().lying(part)).isEqualByComparingTo(before);
        page.locator("#quantity").fill("12");
        button("Take it in").click();
        assertThat(page.locator(".told")).containsText("quantity 12");
        page.locator("#quantity").fill("12");
        page.locator("input[name=further]").check();
        button("Take it in").click();
        assertThat(DESK.rooms().lying(part)).isEqualByComparingTo(before.add(BigDecimal.valueOf(24)));
    }

    @Test
    @DisplayName("more than is still to be made is taken in where that is ticked and said why alone")
    void made_too_many() {
        go("/stores/made");
        Locator first = page.locator("tbody tr")
                .filter(new Locator.FilterOptions()
                        .setHasNot(page.locator(
                                "input[name=lot]:not([type=hidden]), input[name=serials]:not([type=hidden])")));
        String part = first.first().locator("input[name=part]").inputValue();
        BigDecimal before = DESK.rooms().lying(part);
        first.first().locator("input[name=quantity]").fill("999");
        button("Take in what is filled in").click();
        assertThat(page.locator(".refused")).containsText("999 of " + part + " made here, of which");
        assertThat(page.locator(".refused")).not().containsText("--");
        assertThat(DESK.rooms().lying(part)).isEqualByComparingTo(before);
        page.getByText("More than is still to come is kept").click();
        page.locator("#reason").fill("a run for the shelf");
        button("Take in what is filled in").click();
        assertThat(DESK.rooms().lying(part)).isEqualByComparingTo(before.add(BigDecimal.valueOf(999)));
    }

    @Test
    @DisplayName("a count that differs needs a reason, and a part is found by a word of its name")
    void counted() {
        go("/stores/where?word=FX-W6");
        page.locator("a[href='/stores/part?part=FX-W6']").first().click();
        Locator count = page.locator("form[action='/stores/part/count']").first();
        count.locator("input[name=quantity]").fill("3,5");
        count.locator("button").click();
        assertThat(page.locator(".refused")).containsText("found 3.5 each; expected whole pieces");
        count.locator("input[name=quantity]").fill("3");
        count.locator("button").click();
        assertThat(page.locator(".refused")).containsText("a count of 3 where the book has");
        count.locator("input[name=quantity]").fill("500");
        count.locator("input[name=reason]").fill("a bag more on the shelf");
        count.locator("button").click();
        assertThat(page.locator(".told")).containsText("counted 500");
        assertThat(DESK.rooms().lying("FX-W6")).isEqualByComparingTo("500");
    }

    @Test
    @DisplayName("two browsers that reach for the last piece: one has it, the other is told")
    void the_last_part() {
        PickLine line = left(each -> each.part().tracked() == null
                && DESK.rooms().lying(each.part().number().text()).compareTo(each.left()) == 0
                && each.finish().isEmpty());
        String part = line.part().number().text();
        Page second = another(new Browser.NewContextOptions());
        String path = "/stores/line?for=" + RoomsBook.FIRST + "&part=" + part + "&finish=";
        go(path);
        second.navigate(DESK.page(path).toString());

        button("Take it").click();
        second.locator("form[action='/stores/line/take'] button").click();

        assertThat(page.locator(".told")).containsText("part " + part);
        assertThat(second.locator(".refused")).containsText("of which 0 are left to pick");
        assertThat(DESK.rooms().lying(part)).isZero();
    }

    private static int purchases() {
        return DESK.book().read(reading -> reading.stock().purchases(true).size());
    }

    @Test
    @DisplayName(
            "what is bought is summed up first, bought once though the form is sent again, and by one of two desks")
    void bought_once() {
        String path = "/stores/purchases?until=2040-01-01";
        Page second = another(new Browser.NewContextOptions());
        second.navigate(DESK.page(path).toString());
        go(path);
        int before = purchases();
        int suppliers = page.locator("input[name=supplier]").count();
        assertThat(page.locator("tfoot")).containsText("All " + suppliers + " suppliers");
        assertThat(page.locator("tfoot .number")).containsText(Pattern.compile("[0-9],[0-9]{3}\\.[0-9]{2}"));
        page.locator("input[name=supplier]").first().uncheck();
        String place = "Place a purchase order with each that is ticked";
        button(place).click();
        assertThat(page.locator(".told")).containsText("purchase placed");
        assertThat(purchases()).isEqualTo(before + suppliers - 1);
        page.goBack();
        button(place).click();
        assertThat(page.locator("h1")).hasText("Purchase orders");
        assertThat(purchases()).isEqualTo(before + suppliers - 1);

        second.getByText(place).click();
        assertThat(second.locator(".refused"))
                .containsText("placed since this was worked out: PO-1001, by Kim Aster on ");
        go(path);
        page.locator("input[name=supplier]").first().uncheck();
        button(place).click();
        assertThat(page.locator(".refused")).containsText("Supplier: found nothing");
        assertThat(purchases()).isEqualTo(before + suppliers - 1);
    }
}

package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.OrderState;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One order through every room, by nothing but what its pages offer. */
@DisplayName("An order from the first question to a recall, by pages alone")
class WholeDayInBrowserTest extends InBrowser {

    private static final String ORDER = "K-500";
    private static final int MOST = 60;

    /** Parts of which the number is written down get these: the part's number, and which piece it is. */
    private static final String FILL_DELIVERY = """
            () => document.querySelectorAll('main form[method=post] tbody tr').forEach(row => {
              const part = row.querySelector('input[name=part]').value;
              const many = Math.round(Number(row.querySelector('input[name=quantity]').value));
              const lot = row.querySelector('input[name=lot]:not([type=hidden])');
              const serials = row.querySelector('input[name=serials]:not([type=hidden])');
              if (lot) lot.value = 'L-' + part;
              if (serials) serials.value = Array.from({length: many}, (_, i) => part + '#' + (i + 1)).join(' ');
            })
            """;

    private static final Set<Object> PLATED = Set.of("zinc-nickel", "zinc-nickel-small", "dip-black");

    private final LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @TempDir
    private Path folder;

    private OpenDesk desk = null;

    @Override
    OpenDesk desk() {
        return desk;
    }

    @BeforeEach
    void openDesk() {
        desk = OpenDesk.at(folder);
    }

    @AfterEach
    void closeDesk() {
        desk.close();
    }

    @Test
    @DisplayName("goes through every room, is changed in the middle of work, leaves, and is found again")
    void day() {
        sold();
        changedBeforeWork();
        bought();
        made();
        coated();
        picked();
        changedInTheMiddle();
        tested();
        packedAndShipped();
        recalledAndServed();
    }

    private void press(String button) {
        page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .first()
                .click();
    }

    private void done() {
        page().locator("h1").waitFor();
        assertThat(page().locator(".refused").allTextContents()).isEmpty();
        assertThat(page().locator(".told")).hasCount(1);
    }

    private OrderState state() {
        return desk.book()
                .read(reading -> reading.orders().find(ORDER).orElseThrow().state());
    }

    private void sold() {
        open("/sales/new");
        page().getByLabel("Customer").fill("Ann Gable");
        page().getByLabel("Base vehicle built").fill("1968");
        page().getByLabel("Order number").fill(ORDER);
        page().getByLabel("Due").fill(today.plusDays(120).toString());
        press("Begin the order");
        for (int i = 0; i < MOST && page().locator("#asks").count() > 0; i++) {
            page().locator("section.question form button").first().click();
        }
        if (page().locator("#wants").count() > 0) {
            assertThat(page().getByText("Quote it as version 1")).hasCount(0);
            page().locator("#wants ~ form input[type=radio]").first().check();
            press("Keep");
        }
        press("Quote it as version 1");
        page().getByText("The customer orders version 1").click();
        press("Yes, the customer orders version 1");
        assertThat(state()).isEqualTo(OrderState.ORDERED);
    }

    private void propose(String colour, String why) {
        open("/sales/order/" + ORDER);
        page().getByText("Changes and service").click();
        page().getByText("Ask for a change").click();
        Locator asked =
                page().getByLabel("Which colour", new Page.GetByLabelOptions()).first();
        asked.selectOption(colour);
        press("Work out what it comes to");
        assertThat(page().locator(".refused")).containsText("Why it changes: found nothing");
        assertThat(page().locator("#reason")).isFocused();
        assertThat(page().locator("#reason")).hasAttribute("aria-describedby", "why-reason");
        assertThat(asked).hasValue(colour);
        page().locator("#reason").fill(why);
        press("Work out what it comes to");
        done();
        page().locator("summary").last().click();
        assertThat(page().locator("main")).containsText("comes in: ");
    }

    private void changedBeforeWork() {
        open("/sales/order/" + ORDER + "/change");
        String now = page().locator("#option-colour").inputValue();
        List<String> others = page().locator("#option-colour option").all().stream()
                .map(option -> option.getAttribute("value"))
                .filter(value -> !value.equals(now))
                .toList();
        propose(others.get(0), "another colour after all");
        press("Change 1 is accepted");
        done();
        page().getByText("what there is to undo").click();
        assertThat(page().locator("main")).containsText("Nothing is to be undone");
        page().getByText("Changes of " + ORDER).click();
        press("Change 1 is carried out and verified");
        done();
        assertThat(page().locator("h2").first()).hasText("Change 1: carried out");
    }

    private void bought() {
        open("/stores/purchases?until=" + today.plusDays(200));
        int suppliers = page().locator("input[name=supplier]").count();
        assertThat(suppliers).isGreaterThan(8);
        page().locator("form[action='/stores/purchases'][method=post] button").click();
        done();
        assertThat(page().locator("tbody a[href$='/receive']")).hasCount(suppliers);
        page().locator("tbody th a").first().click();
        page().getByText("Print it for the supplier").click();
        assertThat(page().locator(".sheet").first()).containsText("PO-1001");
        for (int i = 0; i < MOST; i++) {
            open("/stores/purchases");
            Locator left = page().locator("tbody a[href$='/receive']");
            if (left.count() == 0) {
                return;
            }
            open(left.first().getAttribute("href") + "?all=yes");
            page().evaluate(FILL_DELIVERY);
            press("Take in what is filled in");
            done();
        }
        throw new AssertionError("There is no end of goods");
    }

    private void made() {
        open("/fabrication/cut?order=" + ORDER);
        assertThat(page().locator(".drawing svg").first()).isVisible();
        press("All is cut as drawn");
        done();
        for (int i = 0; i < MOST; i++) {
            open("/stores/made?all=yes");
            if (page().locator("tbody tr").count() == 0) {
                return;
            }
            page().evaluate(FILL_DELIVERY);
            press("Take in what is filled in");
            done();
        }
        throw new AssertionError("There is no end of what is made");
    }

    private void step(String finish, String to, String load) {
        page().locator("input[name=finish][value='" + finish + "']").check();
        page().locator("#to").selectOption(to);
        page().locator("#load").fill(load);
        press("Write it down");
        done();
    }

    private void coated() {
        open("/fabrication/coat");
        page().locator("form[action='/fabrication/coat/queue'] input[name=order]")
                .fill(ORDER);
        press("Queue all its pieces");
        done();
        for (Object finish : page().locator("input[name=finish]").evaluateAll("all => all.map(one => one.value)")
                        instanceof List<?> all
                ? all
                : List.of()) {
            boolean plated = PLATED.contains(finish);
            step(finish.toString(), plated ? "out" : "hung", "load-" + finish);
            step(finish.toString(), plated ? "back" : "coated", "");
            step(finish.toString(), "accepted", "");
        }
        assertThat(page().locator("input[name=piece]")).hasCount(0);
        open("/fabrication/film?order=" + ORDER);
        page().evaluate("""
                () => document.querySelectorAll("form h2").forEach(batch => {
                  const says = batch.textContent;
                  const um = says.includes('Primer') ? '140' : says.includes('Off-white') ? '50' : '70';
                  batch.nextElementSibling.nextElementSibling.querySelectorAll("input[name^='um']")
                      .forEach(field => field.value = um);
                })
                """);
        press("Judge all, keep nothing yet");
        page().locator("button[formaction='/fabrication/film']").click();
        done();
    }

    /** What somebody reads on a piece that lies in the bin. */
    private String onThePiece(String part) {
        return desk.book()
                .read(reading -> reading.stock().of(part).stream()
                        .map(row -> row.held().serial())
                        .filter(serial -> !serial.isEmpty())
                        .findFirst()
                        .orElseThrow());
    }

    private void picked() {
        open("/bench");
        press("Work on " + ORDER + " begins");
        done();
        for (int i = 0; i < MOST * 3; i++) {
            open("/stores/pick?order=" + ORDER);
            Locator together = page().locator("form[action='/stores/pick/shown'] button");
            Locator serial = page().locator("input[name=serial]:visible");
            if (together.count() > 0) {
                together.first().click();
            } else if (serial.count() > 0) {
                Locator row = page().locator("tbody tr", new Page.LocatorOptions().setHas(serial))
                        .first();
                serial.first().fill(onThePiece(row.locator("input[name=part]").inputValue()));
                row.locator("button").click();
            } else if (page().locator("tbody tr").count() > 0) {
                page().locator("tbody tr button").first().click();
            } else {
                break;
            }
            done();
        }
        assertThat(page().locator("main")).containsText("All is picked");
        press("Call " + ORDER + " complete");
        done();
    }

    private void changedInTheMiddle() {
        open("/sales/order/" + ORDER + "/change");
        String now = page().locator("#option-colour").inputValue();
        String other = page().locator("#option-colour option").all().stream()
                .map(option -> option.getAttribute("value"))
                .filter(value -> !value.equals(now))
                .findFirst()
                .orElseThrow();
        propose(other, "and yet another");
        assertThat(page().locator("main")).containsText("picked already");
        press("Drop it");
        assertThat(page().locator(".refused")).containsText("why it is dropped");
        page().locator("input[name=reason]").fill("too late for that");
        press("Drop it");
        done();
    }

    private void fillTest(Map<String, String> values) {
        page().evaluate("""
                values => {
                  document.querySelectorAll("input[name='box']").forEach((box, i) => {
                    const field = document.querySelectorAll("[name='value']")[i];
                    if (values[box.value] !== undefined) field.value = values[box.value];
                  });
                  document.querySelectorAll("input[name^='instrument-']").forEach(field => field.value = 'M-7');
                }
                """, values);
        press("Judge all, keep nothing yet");
        page().locator("button[formaction='/bench/test/" + ORDER + "']").click();
        done();
    }

    private void tested() {
        Map<String, String> good = FilledAtBench.of(desk.rooms().kit(ORDER));
        String first = good.keySet().iterator().next();
        open("/bench/test/" + ORDER);
        fillTest(Map.of(first, "99999"));
        press("Say that " + ORDER + " is tested");
        assertThat(page().locator(".refused")).containsText("not passed");
        open("/bench/test/" + ORDER);
        fillTest(good);
        open("/bench/test/" + ORDER);
        assertThat(page().locator("tr:has(.judged strong)").allTextContents()).isEmpty();
        open("/bench/test/" + ORDER + "/report");
        press("Say that " + ORDER + " is tested");
        done();
        assertThat(state()).isEqualTo(OrderState.TESTED);
    }

    private void packedAndShipped() {
        open("/bench/pack/" + ORDER);
        page().locator("#crates").fill("eleven");
        press("The kit lies in its crates");
        assertThat(page().locator("#crates")).isFocused();
        page().locator("#crates").fill("11");
        page().locator("#reason").fill("packed otherwise");
        press("The kit lies in its crates");
        done();
        assertThat(page().locator("main")).not().containsText(" fitted, ");
        assertThat(page().locator("[aria-label='What is missing']")).hasCount(0);
        page().locator("#why").fill("looked at each crate myself");
        page().locator("input[name=release]").check();
        press(ORDER + " leaves");
        assertThat(state()).as("a button that was touched in passing").isEqualTo(OrderState.TESTED);
        page().locator("input[name=gone]").check();
        press(ORDER + " leaves");
        done();
        assertThat(state()).isEqualTo(OrderState.SHIPPED);
    }

    private void recalledAndServed() {
        String lot = desk.book()
                .read(reading -> reading.asBuilt().parts(ORDER).stream()
                        .map(part -> part.lot())
                        .filter(each -> !each.isEmpty())
                        .findFirst()
                        .orElseThrow());
        open("/engineering/recall?lot=" + lot);
        assertThat(page().locator("main")).containsText("1 kit");
        assertThat(page().locator("main")).containsText("Ann Gable");
        open("/sales/order/" + ORDER);
        page().getByText("Changes and service").click();
        page().getByText("Send service parts").click();
        page().locator("input[name=part]").first().fill("VA-PUMP");
        page().locator("#price").fill("0");
        page().locator("#reason").fill("recall of the pump");
        press("Send these parts");
        done();
        open("/stores/receive?part=VA-PUMP");
        String number = page().locator("#serials, #lot").count() > 0 ? "VA-PUMP#77" : "VA-PUMP";
        page().locator("#serials, #lot").all().forEach(field -> field.fill(number));
        page().locator("#quantity").fill("1");
        press("Take it in");
        done();
        open("/stores");
        page().locator("a[href='/stores/pick?order=" + ORDER + "']").click();
        page().locator("#code").fill(number);
        page().keyboard().press("Enter");
        done();
        open("/stores");
        assertThat(page().locator("a[href='/stores/pick?order=" + ORDER + "']")).hasCount(0);
    }
}

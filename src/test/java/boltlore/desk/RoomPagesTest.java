package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.stores.PickLine;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The rooms' pages")
class RoomPagesTest extends RoomInBrowser {

    private static final String HOSTILE = "\"><script>alert(1)</script>'; drop table journal; --\u0000\u202e";

    private static final List<String> PAGES = List.of(
            "/stores",
            "/stores/line?for=BL-1001&part=FX-N6&finish=",
            "/stores/receive",
            "/stores/purchases",
            "/stores/made",
            "/sales/order/BL-1001",
            "/sales/order/BL-1001/change",
            "/sales/order/BL-1001/changes",
            "/sales/order/BL-1001/give-up",
            "/stores/part?part=FX-N6",
            "/fabrication",
            "/fabrication/rack",
            "/fabrication/coat",
            "/fabrication/film?order=BL-1001",
            "/bench",
            "/bench/pack/BL-1001",
            "/engineering?words=pump",
            "/engineering/part?part=FX-N6",
            "/engineering/edit",
            "/engineering/recall?part=FX-N6",
            "/office",
            "/office/journal",
            "/office/persons",
            "/office/person/P-1",
            "/office/person/P-1/erase");

    /** Long ones, in one of the two schemes. */
    private static final List<String> SHEETS = List.of(
            "/stores/pick?order=BL-1001",
            "/stores/pick?order=BL-1004&all=yes",
            "/stores/purchases?until=2030-01-01&all=yes",
            "/fabrication/cut?order=BL-1001",
            "/fabrication/loads?order=BL-1001",
            "/bench/test/BL-1001",
            "/bench/ship/BL-1001",
            "/office/load");

    @Test
    @DisplayName("offer an order to compare with whose it is, not its number alone")
    void offered() {
        go("/sales/compare");
        assertThat(page.locator("datalist option[value='BL-1001']").textContent())
                .as("customer, kit and state")
                .matches("[^,]+.*, [^,]+, [a-z ]+");
    }

    @Test
    @DisplayName("compare an order from its own page and in the middle of a change, with open orders offered first")
    void compared() {
        for (String path : List.of("", "/change", "/changes")) {
            go("/sales/order/" + RoomsBook.FIRST + path);
            page.getByText("Compare it with another order").click();
            assertThat(page.locator("#one").inputValue()).as(path).isEqualTo(RoomsBook.FIRST);
            assertThat(page.locator("#other").evaluate("field => field === document.activeElement"))
                    .isEqualTo(true);
        }
        page.locator("#other").fill(RoomsBook.SECOND);
        button("Compare").click();
        assertThat(page.locator("details").innerText()).contains("parts differ");
        page.locator("summary").click();
        assertThat(page.locator("details").innerText())
                .contains("CH-K3 Three-phase contactor, rev. B")
                .doesNotContain("zinc-nickel")
                .doesNotContain("black-satin");
    }

    @Test
    @DisplayName("offer nothing to compare with that is lost: it can be typed")
    void not_offered() {
        DESK.rooms().give("BL-1005");
        go("/sales/compare");
        assertThat(page.locator("datalist option[value='" + RoomsBook.FIRST + "']")
                        .count())
                .isEqualTo(1);
        assertThat(page.locator("datalist option[value='BL-1005']").count()).isZero();
    }

    @Test
    @DisplayName("show an order that refutes a statement in the words of its options, not in their codes")
    void refuted() {
        go("/engineering/proof/pannier-van");
        assertThat(page.locator("main details p").allTextContents())
                .isNotEmpty()
                .noneMatch(says -> says.contains("="));
    }

    @Test
    @DisplayName("account for every statement of a proof")
    void accounted() {
        go("/engineering/proof/pannier-van");
        int[] counts = Pattern.compile("\\d[\\d,]*")
                .matcher(page.locator("p.next").innerText())
                .results()
                .mapToInt(count -> Integer.parseInt(count.group().replace(",", "")))
                .toArray();
        assertThat(counts)
                .as("statements, orders, proved, defects, accepted, said, notes")
                .hasSize(7);
        assertThat(page.locator("main details li").count()).isEqualTo(counts[6]);
        assertThat(counts[2] + counts[3] + counts[4] + counts[5] + counts[6]).isEqualTo(counts[0]);
    }

    @Test
    @DisplayName("are readable for all, by day (WCAG 2.2 AA, as far as axe-core sees)")
    void light() {
        SoftAssertions all = new SoftAssertions();
        for (String path : PAGES) {
            go(path);
            all.assertThat(violations()).as(path).isEmpty();
            all.assertThat(overlapping())
                    .as(path + ": one thing to press over another")
                    .isEmpty();
        }
        all.assertAll();
    }

    @Test
    @DisplayName("are readable for all in a dark room, the sheets too")
    void dark() {
        show(new Browser.NewContextOptions().setColorScheme(ColorScheme.DARK));
        SoftAssertions all = new SoftAssertions();
        for (String path : SHEETS) {
            go(path);
            all.assertThat(violations()).as(path).isEmpty();
            all.assertThat(overlapping())
                    .as(path + ": one thing to press over another")
                    .isEmpty();
        }
        all.assertAll();
    }

    @Test
    @DisplayName("call no kit complete that lacks what every vehicle must have, brakes and interlock among it")
    void safety() {
        go("/stores/pick?order=" + RoomsBook.FIRST);
        Map<String, PickLine> lines = DESK.rooms().lines(RoomsBook.FIRST).stream()
                .collect(Collectors.toMap(line -> line.part().number().text(), line -> line, (one, other) -> one));
        SoftAssertions all = new SoftAssertions();
        for (String part : List.of("VA-PUMP", "VA-RES", "VA-CHK", "HV-IL1", "LV-BRS", "LV-CRA", "HV-SD1")) {
            all.assertThat(lines)
                    .as(part)
                    .hasEntrySatisfying(part, line -> assertThat(line.safety()).isTrue());
        }
        all.assertThat(lines.get("FX-N6").safety())
                .as("a nut at no signed joint")
                .isFalse();
        all.assertAll();
    }

    /** What can be pressed or filled in and lies over the next such thing. */
    @SuppressWarnings("unchecked")
    private List<String> overlapping() {
        return (List<String>) page.evaluate("""
                () => {
                  const boxes = [...document.querySelectorAll('main a, main button, main input, main select')]
                    .filter(each => each.checkVisibility() && each.type !== 'hidden')
                    .flatMap(each => [...each.getClientRects()].map(box => ({each, box})));
                  const over = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1
                    && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1;
                  const found = [];
                  for (let i = 0; i < boxes.length; i++) {
                    for (let j = i + 1; j < Math.min(boxes.length, i + 30); j++) {
                      if (boxes[i].each !== boxes[j].each && !boxes[i].each.contains(boxes[j].each)
                          && over(boxes[i].box, boxes[j].box)) {
                        found.push(boxes[i].each.outerHTML.slice(0, 80) + ' / ' + boxes[j].each.outerHTML.slice(0, 80));
                      }
                    }
                  }
                  return found;
                }
                """);
    }

    @Test
    @DisplayName("call parts, materials and families by their names, not by codes alone")
    void names() {
        go("/bench/pack/" + RoomsBook.FIRST);
        assertThat(page.locator("main").innerText()).contains("AC-TXV Expansion valve");
        go("/fabrication/rack");
        assertThat(page.locator("#material option").allInnerTexts())
                .anyMatch(says -> says.startsWith("Copper"))
                .doesNotContain("cu-bar-20x3");
        go("/engineering");
        assertThat(page.locator(".ways").innerText())
                .contains("Ockmere Pannier")
                .doesNotContain("pannier-van");
        for (String room : List.of("/sales", "/stores", "/fabrication", "/bench", "/office")) {
            go(room);
            assertThat(page.locator("main").innerText()).as(room).doesNotContain("pannier-van");
        }
        String customer = DESK.book()
                .read(reading ->
                        reading.orders().find(RoomsBook.FIRST).orElseThrow().customer());
        for (String path : List.of(
                "/office/person/" + customer,
                "/office/journal",
                "/engineering/part?part=FX-N6",
                "/fabrication/film?order=" + RoomsBook.FIRST)) {
            go(path);
            assertThat(page.locator("main").innerText()).as(path).doesNotContain("pannier-van");
        }
        assertThat(page.locator("main").innerText()).contains("PV-BL-S Battery box lid");
        for (String path : List.of(
                "/office",
                "/stores/short",
                "/stores/part?part=PV-VPB",
                "/stores/pick?all=yes&order=" + RoomsBook.FIRST,
                "/bench/pack/" + RoomsBook.FIRST)) {
            go(path);
            assertThat(page.locator("main").innerText())
                    .as(path)
                    .doesNotContain("zinc-nickel")
                    .doesNotContain("black-satin");
        }
    }

    @Test
    @DisplayName("say of a page that has nothing to show what it lacks, and only of an unknown one that there is none")
    void nothingToShow() {
        go("/fabrication/loads");
        assertThat(page.locator("h1").innerText()).isEqualTo("Nothing to show");
        assertThat(page.locator("main").innerText()).contains("Order: found nothing");
        go("/fabrication/nowhere");
        assertThat(page.locator("h1").innerText()).isEqualTo("There is no such page");
    }

    @Test
    @DisplayName("tell in full, before a kit leaves, what a person still has to check")
    void checksBeforeItLeaves() {
        go("/bench/ship/" + RoomsBook.FIRST);
        assertThat(page.locator("main").innerText())
                .contains("To be checked")
                .contains("Weigh it before anybody calls it within the limit.");
    }

    /** A form of a page, with what stands in its fields. */
    private record Form(String action, String method, Map<String, String> fields, List<String> texts) {}

    @SuppressWarnings("unchecked")
    private List<Form> forms() {
        List<Map<String, Object>> found = (List<Map<String, Object>>) page.evaluate("""
                () => {
                  const seen = new Set();
                  return [...document.querySelectorAll('main form')].filter(form => {
                    const fresh = !seen.has(form.getAttribute('action'));
                    seen.add(form.getAttribute('action'));
                    return fresh;
                  }).map(form => ({
                    action: form.getAttribute('action'), method: form.method,
                    fields: Object.fromEntries([...new FormData(form)].map(([name, value]) => [name, String(value)])),
                    texts: [...form.elements].filter(e => e.name && (e.type === 'text' || e.type === 'search')).map(e => e.name)
                  }));
                }
                """);
        return found.stream()
                .map(form -> new Form(
                        (String) form.get("action"),
                        (String) form.get("method"),
                        (Map<String, String>) form.get("fields"),
                        (List<String>) form.get("texts")))
                .toList();
    }

    @Test
    @DisplayName("show what a hostile hand types as text, and do nothing of it")
    void hostile() {
        List<String> paths = new ArrayList<>(PAGES);
        paths.addAll(SHEETS);
        long before = DESK.book()
                .read(reading -> reading.journal().last().orElseThrow().number());
        SoftAssertions all = new SoftAssertions();
        for (String path : paths) {
            go(path);
            for (Form form :
                    forms().stream().filter(each -> !each.texts().isEmpty()).toList()) {
                APIResponse answer = send(form);
                all.assertThat(answer.status()).as(form.action()).isIn(200, 404, 422);
                all.assertThat(answer.text()).as(form.action()).doesNotContain("<script>alert");
            }
        }
        all.assertAll();
        assertThat(DESK.book()
                        .read(reading -> reading.journal().last().orElseThrow().number())
                        .longValue())
                .isEqualTo(before);
    }

    private APIResponse send(Form form) {
        if (form.method().equals("get")) {
            RequestOptions options = RequestOptions.create();
            form.texts().forEach(name -> options.setQueryParam(name, HOSTILE));
            return context().request().get(DESK.page(form.action()).toString(), options);
        }
        FormData data = FormData.create();
        form.fields().forEach((name, value) -> data.set(name, form.texts().contains(name) ? HOSTILE : value));
        String origin = DESK.address().toString().replaceAll("/$", "");
        return context()
                .request()
                .post(
                        DESK.page(form.action()).toString(),
                        RequestOptions.create().setHeader("Origin", origin).setForm(data));
    }
}

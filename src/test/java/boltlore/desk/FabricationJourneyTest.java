package boltlore.desk;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("In fabrication")
class FabricationJourneyTest extends RoomInBrowser {

    private static final String OF_FIRST = "?order=" + RoomsBook.FIRST;

    @Test
    @DisplayName("bars are drawn, cut as drawn, and what is left of them lies on the rack with its heat")
    void cut() {
        go("/fabrication/cut" + OF_FIRST);
        assertThat(page.locator(".drawing svg").first()).isVisible();
        Locator heat =
                page.locator("form[action='/fabrication/cut'] input[name=heat]").first();
        heat.fill("H-4711");
        button("All is cut as drawn").click();

        assertThat(page.locator("h1")).hasText("Remnants on the rack");
        assertThat(page.locator(".told")).containsText("heat H-4711");
        assertThat(page.locator("tbody")).containsText(RoomsBook.FIRST);
    }

    @Test
    @DisplayName("pieces go through the coating shop by keyboard alone, and not past a step")
    void coated() {
        go("/fabrication/coat");
        tabTo(page.locator("form[action='/fabrication/coat/queue'] input[name=order]"));
        type(RoomsBook.FIRST);
        press("Enter");
        assertThat(page.locator(".told")).containsText("to waiting");

        Locator piece = page.locator("input[name=piece]").first();
        String name = piece.inputValue();
        tabTo(piece);
        press("Space");
        page.locator("#to").focus();
        page.locator("#to").selectOption("accepted");
        button("Write it down").focus();
        press("Enter");
        assertThat(page.locator(".refused")).containsText("'waiting', from where it does not go to 'accepted'");

        piece = page.locator("input[name=piece][value='" + name + "']");
        assertThat(piece).isChecked();
        assertThat(page.locator("input[name=piece]:checked")).hasCount(1);
        page.locator("#to").selectOption("hung");
        page.locator("#load").focus();
        type("load-1");
        press("Enter");
        assertThat(page.locator(".refused")).containsText("no bare ");

        assertThat(page.locator("#load")).hasValue("load-1");
        page.locator("#reason").focus();
        type("made this morning");
        press("Enter");
        assertThat(page.locator(".told")).containsText("to hung");
        assertThat(page.locator("tbody tr")
                        .filter(new Locator.FilterOptions().setHasText(name))
                        .first())
                .containsText("load-1");
    }

    @Test
    @DisplayName("a film reading is judged as soon as it is typed, with the judgement that the record gets")
    void film_judged_as_typed() {
        go("/fabrication/film" + OF_FIRST);
        Locator row = page.locator("tr[hx-get]").first();
        for (int reading = 1; reading <= 5; reading++) {
            row.locator("input[name=um" + reading + "]").fill("9");
        }
        row.locator("input[name=flaw]").focus();
        assertThat(row.locator(".judged")).containsText("NOT accepted: below minimum, mean 9 µm");
        row.locator("input[name=um5]").fill("thick");
        row.locator("input[name=flaw]").focus();
        assertThat(row.locator(".judged")).containsText("found 'thick'");

        for (int reading = 1; reading <= 5; reading++) {
            row.locator("input[name=um" + reading + "]").fill("70,5");
        }
        row.locator("input[name=flaw]").focus();
        assertThat(row.locator(".judged")).containsText("accepted, mean 70.5 µm");
        press("Enter");

        assertThat(page.locator("h1")).hasText("Film readings of " + RoomsBook.FIRST);
        assertThat(row.locator(".judged")).containsText("accepted, mean 70.5 µm");
        Locator keep = page.locator("button[formaction='/fabrication/film']");
        assertThat(keep).containsText("Keep the record as Kim Aster: 1 of ");
        row.locator("input[name=um5]").fill("");
        page.locator("input[name=um1]").nth(1).fill("70");
        keep.click();
        assertThat(page.locator(".refused")).containsText("2 pieces filled in");
        page.locator("input[name=um1]").nth(1).fill("");
        row.locator("input[name=um5]").fill("70.5");
        button("Judge all, keep nothing yet").click();
        keep.click();

        assertThat(page.locator("h1")).containsText("assessed");
        assertThat(page.locator(".told")).containsText("of film");
        page.locator("a[href*='leaf=Pieces']").click();
        assertThat(page.locator(".sheet")).containsText("70.5");
    }

    @Test
    @DisplayName("the loads of the oven are drawn, with the masks to fetch")
    void loads() {
        go("/fabrication/loads" + OF_FIRST);
        assertThat(page.locator(".sheet").first()).containsText("Mask");
        page.locator("a[href*='leaf=all']").click();
        assertThat(page.locator(".drawing svg").count()).isPositive();
    }
}

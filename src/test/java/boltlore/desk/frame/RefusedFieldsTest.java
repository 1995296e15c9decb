package boltlore.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** WCAG 2.2, 3.3.1: the item that is in error is identified, and the error is described in text. */
@DisplayName("A form that was refused")
class RefusedFieldsTest {

    private static final String FORM = "<input id=\"search\" autofocus><form action=\"/do\" method=\"post\">"
            + "<input type=\"hidden\" name=\"token\" value=\"t\"><input type=\"hidden\" name=\"part\" value=\"PX-1\">"
            + "<input type=\"text\" id=\"q\" name=\"quantity\" aria-describedby=\"hint\" value=\"x\">"
            + "<select id=\"to\" name=\"to\"><option>a</option></select></form>";

    private static String shown(Map<String, String> fields, String page) {
        return new RefusedFields(fields, Map.of("part", List.of("PX-1"))).in(page, "/do");
    }

    private static Element quantity(String page) {
        return Jsoup.parse(page).expectFirst("[aria-invalid]");
    }

    @Test
    void says_why_beside_its_field_which_is_described_by_it_and_has_the_keyboard() {
        Element quantity = quantity(shown(Map.of("quantity", "Quantity: found 'x' & more."), FORM));

        assertThat(quantity.id()).isEqualTo("q");
        assertThat(quantity.attr("aria-describedby")).isEqualTo("why-quantity hint");
        assertThat(quantity.root().select("[autofocus]")).containsExactly(quantity);
        Element why = quantity.nextElementSibling();
        assertThat(why)
                .hasToString("<strong class=\"why\" id=\"why-quantity\">Quantity: found 'x' &amp; more.</strong>");
    }

    @Test
    void keeps_a_value_whole_that_holds_what_ends_a_tag() {
        String page = FORM.replace("value=\"x\"", "value=\"3 > 2 /> &quot;x&quot;\"");

        assertThat(quantity(shown(Map.of("quantity", "why"), page)).val()).isEqualTo("3 > 2 /> \"x\"");
        assertThat(shown(Map.of("part", "why"), FORM.replace("\"token\" value=\"t\"", "\"token\" value=\"a>b\"")))
                .doesNotContain("id=\"why-part\"");
    }

    @Test
    void keeps_all_else_of_the_page_as_it_is() {
        String head =
                "<!doctype html><html lang=\"en\"><head><script nonce=\"n\">if (1 < 2 && 3 > 2) {}</script></head>";
        String body = "<body><pre>\n two  blanks</pre><p>3 &lt; 4 &amp; \u00a0x\u2009%</p></body></html>";
        Document before = Jsoup.parse(head + body.replace("</body>", FORM + "</body>"));
        Document after =
                Jsoup.parse(shown(Map.of("quantity", "why"), head + body.replace("</body>", FORM + "</body>")));

        after.select("strong.why").remove();
        after.select("[aria-invalid]").removeAttr("aria-invalid").attr("aria-describedby", "hint");
        before.select("[autofocus]").removeAttr("autofocus");
        after.select("[autofocus]").removeAttr("autofocus");
        assertThat(after.html()).isEqualTo(before.html());
    }

    @Test
    void says_it_behind_a_list_and_gives_the_keyboard_to_the_first_field_alone() {
        Map<String, String> both = new LinkedHashMap<>();
        both.put("quantity", "one");
        both.put("to", "two");

        assertThat(shown(both, FORM))
                .contains("</select><strong class=\"why\" id=\"why-to\">two</strong>")
                .containsOnlyOnce(" autofocus");
    }

    @Test
    void of_several_rows_is_the_one_whose_hidden_fields_were_sent() {
        Element quantity = quantity(shown(Map.of("quantity", "why"), FORM.replace("PX-1", "PX-2") + FORM));

        assertThat(quantity.root().select("[aria-invalid]")).hasSize(1);
        assertThat(quantity.closest("form").select("[name=part]").val()).isEqualTo("PX-1");
    }

    @Test
    void stays_as_it_is_where_the_field_is_not_on_it_or_the_form_is_another() {
        assertThat(shown(Map.of("mass", "why"), FORM)).isEqualTo(FORM);
        assertThat(shown(Map.of("quantity", "why"), FORM.replace("/do", "/other")))
                .isEqualTo(FORM.replace("/do", "/other"));
    }
}

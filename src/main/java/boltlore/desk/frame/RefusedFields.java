package boltlore.desk.frame;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Shows at each field of a form why it was refused: a sentence after it that it is described by, and the first of them is
 * where the page begins to be worked on (WCAG 2.2, 3.3.1 and 3.3.3).
 *
 * @param fields name and sentence of each, the first one first
 * @param said what the form said, by which it is told from others of the same action
 */
record RefusedFields(Map<String, String> fields, Map<String, List<String>> said) {

    /** The page with the sentences at the fields of the form with that action; as it is where there is no such form. */
    String in(String page, String action) {
        Document document = Jsoup.parse(page);
        document.outputSettings().prettyPrint(false);
        boolean isTold = document.forms().stream()
                .filter(form -> form.attr("action").equals(action) && isSame(form))
                .findFirst()
                .filter(this::told)
                .isPresent();
        return isTold ? document.outerHtml() : page;
    }

    /** Rows of a list have the same form each; what stands in it unseen says which row it is. */
    private boolean isSame(Element form) {
        return form.select("input[type=hidden]").stream()
                .filter(hidden -> !List.of(Guard.TOKEN, Guard.ONCE).contains(hidden.attr("name")))
                .allMatch(hidden ->
                        said.getOrDefault(hidden.attr("name"), List.of("")).contains(hidden.val()));
    }

    private boolean told(Element form) {
        boolean first = true;
        for (Map.Entry<String, String> field : fields.entrySet()) {
            Optional<Element> control = form.select("input:not([type=hidden]), select, textarea").stream()
                    .filter(each -> each.attr("name").equals(field.getKey()))
                    .findFirst();
            if (control.isPresent()) {
                tell(control.get(), "why-" + field.getKey(), field.getValue(), first);
                first = false;
            }
        }
        return !first;
    }

    private static void tell(Element control, String id, String why, boolean isFirst) {
        control.attr("aria-describedby", (id + " " + control.attr("aria-describedby")).strip());
        control.attr("aria-invalid", "true");
        control.after(new Element("strong").addClass("why").attr("id", id).text(why));
        if (isFirst) {
            control.root().select("[autofocus]").removeAttr("autofocus");
            control.attr("autofocus", true);
        }
    }
}

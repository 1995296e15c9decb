package boltlore.desk.frame;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Shows at each field of a form why it was refused: a sentence after it that it is described by, and the first of them is
 * where the page begins to be worked on (WCAG 2.2, 3.3.1 and 3.3.3). Works on the pages that the templates wrote, whose
 * attributes stand in quotes.
 *
 * @param fields name and sentence of each, the first one first
 * @param said what the form said, by which it is told from others of the same action
 */
record RefusedFields(Map<String, String> fields, Map<String, List<String>> said) {

    /** All that stands in a tag: a '>' in the quotes of a value does not end it. */
    private static final String ATTRIBUTES = "(?:[^>\"]++|\"[^\"]*+\")*+";

    /** As many whole attributes as it takes, up to the name of one. */
    private static final String SOME = "(?:[^>\"]*+\"[^\"]*+\")*?[^>\"]*?";

    private static final Pattern FORM = Pattern.compile("<form\\b(" + ATTRIBUTES + ")>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\"(?: value=\"([^\"]*)\")?>");
    private static final Pattern AUTOFOCUS = Pattern.compile(" autofocus(?=[\\s>])(=\"[^\"]*\")?");

    /** The page with the sentences at the fields of the form with that action; as it is where there is no such form. */
    String in(String page, String action) {
        Matcher form = FORM.matcher(page);
        while (form.find()) {
            if (form.group(1).contains("action=\"" + action + "\"") && isSame(form.group(2))) {
                String fields = at(form.group(2));
                return fields.equals(form.group(2))
                        ? page
                        : unfocused(page.substring(0, form.start(2))) + fields + unfocused(page.substring(form.end(2)));
            }
        }
        return page;
    }

    /** Rows of a list have the same form each; what stands in it unseen says which row it is. */
    private boolean isSame(String form) {
        Matcher hidden = HIDDEN.matcher(form);
        while (hidden.find()) {
            String name = hidden.group(1);
            String value = hidden.group(2) == null ? "" : hidden.group(2);
            boolean own = name.equals(Guard.TOKEN) || name.equals(Guard.ONCE);
            if (!own && !said.getOrDefault(name, List.of("")).contains(plain(value))) {
                return false;
            }
        }
        return true;
    }

    private static String plain(String html) {
        return html.replace("&#34;", "\"").replace("&lt;", "<").replace("&amp;", "&");
    }

    private static String unfocused(String html) {
        return AUTOFOCUS.matcher(html).replaceAll("");
    }

    private String at(String form) {
        String shown = form;
        boolean first = true;
        for (Map.Entry<String, String> field : fields.entrySet()) {
            Pattern control = Pattern.compile("<(input|select|textarea)\\b(?!" + SOME + "\\btype=\"hidden\")" + SOME
                    + "\\bname=\"" + Pattern.quote(field.getKey()) + "\"" + ATTRIBUTES + ">");
            Matcher found = control.matcher(shown);
            if (found.find()) {
                String id = "why-" + field.getKey();
                String opened = described(AUTOFOCUS.matcher(found.group()).replaceAll(""), id, first);
                int end = end(shown, found);
                shown = (first ? unfocused(shown.substring(0, found.start())) : shown.substring(0, found.start()))
                        + opened
                        + shown.substring(found.end(), end)
                        + "<strong class=\"why\" id=\"" + id + "\">" + escaped(field.getValue()) + "</strong>"
                        + (first ? unfocused(shown.substring(end)) : shown.substring(end));
                first = false;
            }
        }
        return shown;
    }

    private static int end(String form, Matcher control) {
        String closing = "</" + control.group(1) + ">";
        int closed = control.group(1).equals("input") ? -1 : form.indexOf(closing, control.end());
        return closed < 0 ? control.end() : closed + closing.length();
    }

    private static String described(String control, String id, boolean focused) {
        String by = control.contains(" aria-describedby=\"")
                ? control.replace(" aria-describedby=\"", " aria-describedby=\"" + id + " ")
                : control.replaceFirst("\\s?/?>$", " aria-describedby=\"" + id + "\">");
        return by.replaceFirst(">$", " aria-invalid=\"true\"" + (focused ? " autofocus" : "") + ">");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&#34;");
    }
}

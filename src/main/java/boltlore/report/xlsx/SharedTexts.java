package boltlore.report.xlsx;

import boltlore.report.Utf8;
import boltlore.report.xlsx.XlsxPackage.Part;
import java.util.HashMap;
import java.util.Map;

/** The part that holds every text of a workbook once; cells refer to it by number (ECMA-376 part 1, 18.4). */
final class SharedTexts {

    /** A cell holds no more (a limit that Excel documents). */
    private static final int LONGEST_TEXT = 32_767;

    private final Map<String, Integer> plain = new HashMap<>();
    private final Utf8 items = new Utf8(16 * 1024);
    private int count;

    int number(String text) {
        Integer known = plain.get(text);
        if (known != null) {
            return known;
        }
        items.append("<si>");
        append(text);
        items.append("</si>");
        plain.put(text, count);
        return count++;
    }

    /** A text with bold words before it. */
    int number(String lead, String text) {
        items.append("<si>");
        run("<b/>", lead + ": ");
        run("", text);
        items.append("</si>");
        return count++;
    }

    void writeTo(Part part) {
        String head =
                Xml.HEAD + "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" uniqueCount=\""
                        + count + "\">";
        part.write(new Utf8(256).append(head), items.append("</sst>"));
    }

    private void run(String weight, String text) {
        items.append("<r><rPr>").append(weight).append("<sz val=\"").append(Dress.BODY_POINTS);
        items.append("\"/><rFont val=\"").append(Dress.TYPEFACE).append("\"/></rPr>");
        append(text);
        items.append("</r>");
    }

    private void append(String text) {
        String fitting = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) : text;
        items.append(mindsBlanks(fitting) ? "<t xml:space=\"preserve\">" : "<t>");
        items.append(Xml.escaped(fitting)).append("</t>");
    }

    /** Whether blanks stand where an XML reader may drop them. */
    private static boolean mindsBlanks(String text) {
        return !text.isEmpty()
                && (text.charAt(0) <= ' ' || text.charAt(text.length() - 1) <= ' ' || text.indexOf('\n') >= 0);
    }
}

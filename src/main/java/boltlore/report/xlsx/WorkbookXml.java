package boltlore.report.xlsx;

import java.util.List;

/** The workbook part: its sheets, the rows that repeat in print, and what of each sheet is printed. */
final class WorkbookXml {

    private WorkbookXml() {}

    /** @param relations of the workbook part to its sheets, in their order */
    static String xml(List<LaidPage> pages, List<String> names, List<String> relations) {
        StringBuilder xml = new StringBuilder(Xml.HEAD);
        xml.append("<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"")
                .append(" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">")
                .append("<workbookPr/><bookViews><workbookView activeTab=\"0\"/></bookViews><sheets>");
        for (int i = 0; i < pages.size(); i++) {
            xml.append("<sheet name=\"").append(Xml.escaped(names.get(i)));
            xml.append("\" sheetId=\"")
                    .append(i + 1)
                    .append("\" r:id=\"")
                    .append(relations.get(i))
                    .append("\"/>");
        }
        xml.append("</sheets><definedNames>");
        for (int i = 0; i < pages.size(); i++) {
            LaidPage page = pages.get(i);
            String last = Ref.fixed(page.grid().columns() - 1, page.rows().size() - 1);
            defined(xml, "Print_Area", i, Ref.on(names.get(i), "$A$1:" + last));
        }
        for (int i = 0; i < pages.size(); i++) {
            int sheet = i;
            PrintXml.repeatedRow(pages.get(i))
                    .map(row -> "$" + (row + 1) + ":$" + (row + 1))
                    .ifPresent(rows -> defined(xml, "Print_Titles", sheet, Ref.on(names.get(sheet), rows)));
        }
        return xml.append("</definedNames></workbook>").toString();
    }

    private static void defined(StringBuilder xml, String name, int sheet, String range) {
        xml.append("<definedName name=\"_xlnm.")
                .append(name)
                .append("\" localSheetId=\"")
                .append(sheet);
        xml.append("\">").append(Xml.escaped(range)).append("</definedName>");
    }
}

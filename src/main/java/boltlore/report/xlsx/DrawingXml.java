package boltlore.report.xlsx;

import java.util.List;

/** The drawing part of a worksheet: where its charts and pictures stand. */
final class DrawingXml {

    /** English Metric Units (ECMA-376 part 1, 20.1.10.16) in a point. */
    private static final int PER_POINT = 12_700;

    /** Points in a character of the body type: 7 pixels of 1/96 inch. */
    static final double POINTS_PER_CHARACTER = 7 * 72.0 / 96;

    /** The same where a program does not round a figure of Arial at 9 points, 0.556 of that, to pixels. */
    static final double LEAST_PER_CHARACTER = 0.556 * Dress.BODY_POINTS * 0.985;

    static final double POINTS_PER_MM = 72 / 25.4;

    private DrawingXml() {}

    /** @param relations of the drawing part to its charts and then its pictures, in their order */
    static String xml(LaidPage page, List<String> relations) {
        StringBuilder xml = new StringBuilder(Xml.HEAD);
        xml.append("<xdr:wsDr xmlns:xdr=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\"")
                .append(" xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\">");
        for (int i = 0; i < page.charts().size(); i++) {
            anchor(xml, page, page.charts().get(i), i, relations.get(i));
        }
        for (int i = 0; i < page.pictures().size(); i++) {
            int number = page.charts().size() + i + 1;
            PictureXml.append(xml, page.pictures().get(i), number, relations.get(number - 1));
        }
        return xml.append("</xdr:wsDr>").toString();
    }

    private static void anchor(StringBuilder xml, LaidPage page, LaidChart chart, int i, String relation) {
        xml.append("<xdr:twoCellAnchor editAs=\"oneCell\">");
        corner(xml, "from", page.grid(), chart.from(), chart.firstRow());
        corner(xml, "to", page.grid(), chart.to(), chart.lastRow() + 1);
        xml.append("<xdr:graphicFrame macro=\"\"><xdr:nvGraphicFramePr><xdr:cNvPr id=\"")
                .append(i + 2)
                .append("\" name=\"Chart ")
                .append(i + 1)
                .append("\" descr=\"")
                .append(Xml.escaped(chart.chart().title()))
                .append("\"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>")
                .append("<xdr:xfrm><a:off x=\"0\" y=\"0\"/><a:ext cx=\"0\" cy=\"0\"/></xdr:xfrm><a:graphic>")
                .append("<a:graphicData uri=\"http://schemas.openxmlformats.org/drawingml/2006/chart\">")
                .append("<c:chart xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\"")
                .append(" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\" r:id=\"")
                .append(relation)
                .append("\"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>");
    }

    static long units(double points) {
        return Math.round(points * PER_POINT);
    }

    private static void corner(StringBuilder xml, String name, Grid grid, double at, int row) {
        int column = 0;
        double left = at;
        while (column < grid.columns() - 1 && left > grid.width(column)) {
            left -= grid.width(column++);
        }
        left = Math.min(left, grid.width(column));
        xml.append("<xdr:").append(name).append("><xdr:col>").append(column).append("</xdr:col><xdr:colOff>");
        xml.append(units(left * POINTS_PER_CHARACTER)).append("</xdr:colOff><xdr:row>");
        xml.append(row)
                .append("</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:")
                .append(name)
                .append('>');
    }
}

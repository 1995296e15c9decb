package boltlore.report.xlsx;

import boltlore.report.Look;
import boltlore.report.Utf8;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The style part: each font, band, rule and number format that occurs once, and a cell style for each face. */
final class Styles {

    /** Numbers below this belong to formats that every program knows (ECMA-376 part 1, 18.8.30). */
    private static final int FIRST_OWN_FORMAT = 164;

    private final Map<Face, Integer> faces = new LinkedHashMap<>();
    /** A table's cells share their faces, and asking for the same object again is much the quickest. */
    private final IdentityHashMap<Face, byte[]> seen = new IdentityHashMap<>();

    private final Map<String, Integer> fonts = new LinkedHashMap<>();
    private final Map<String, Integer> fills = new LinkedHashMap<>();
    private final Map<String, Integer> borders = new LinkedHashMap<>();
    private final Map<String, Integer> formats = new LinkedHashMap<>();
    private final StringBuilder cellStyles = new StringBuilder();

    Styles() {
        number(fonts, font(Dress.BODY_POINTS, false));
        number(fills, "<fill><patternFill patternType=\"none\"/></fill>");
        number(fills, "<fill><patternFill patternType=\"gray125\"/></fill>");
        number(borders, "<border><left/><right/><top/><bottom/><diagonal/></border>");
    }

    /**
     * What stands in a cell of that face between its address and the end of its style's number; number 0 is a cell that
     * nothing is said about.
     */
    byte[] reference(Face face) {
        byte[] reference = seen.get(face);
        if (reference == null) {
            reference = Utf8.encoded("\" s=\"" + faces.computeIfAbsent(face, this::make));
            seen.put(face, reference);
        }
        return reference;
    }

    private int make(Face face) {
        cellStyles.append(cellStyle(face));
        return faces.size() + 1;
    }

    String xml() {
        return Xml.HEAD + "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                + formatsXml()
                + list("fonts", fonts)
                + list("fills", fills)
                + list("borders", borders)
                + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
                + "<cellXfs count=\"" + (faces.size() + 1) + "\">"
                + "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>" + cellStyles + "</cellXfs>"
                + "<cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles>"
                + "</styleSheet>";
    }

    private String cellStyle(Face face) {
        Dress dress = Dress.of(face.look());
        int format = face.format().equals(Format.GENERAL) ? 0 : FIRST_OWN_FORMAT + number(formats, face.format());
        String vertical = vertical(face.look());
        return "<xf numFmtId=\"" + format
                + "\" fontId=\"" + number(fonts, font(dress.points(), dress.bold()))
                + "\" fillId=\"" + number(fills, fill(dress.band()))
                + "\" borderId=\"" + number(borders, border(dress))
                + "\" xfId=\"0\" applyNumberFormat=\"1\" applyFont=\"1\" applyFill=\"1\" applyBorder=\"1\" applyAlignment=\"1\""
                + (face.quoted() ? " quotePrefix=\"1\"" : "")
                + "><alignment horizontal=\"" + horizontal(face.set()) + " vertical=\"" + vertical
                + "\" wrapText=\"1\"/></xf>";
    }

    private String formatsXml() {
        if (formats.isEmpty()) {
            return "";
        }
        return formats.entrySet().stream()
                .map(entry -> "<numFmt numFmtId=\"" + (FIRST_OWN_FORMAT + entry.getValue()) + "\" formatCode=\""
                        + Xml.escaped(entry.getKey()) + "\"/>")
                .collect(Collectors.joining("", "<numFmts count=\"" + formats.size() + "\">", "</numFmts>"));
    }

    private static int number(Map<String, Integer> known, String xml) {
        return known.computeIfAbsent(xml, unknown -> known.size());
    }

    private static String list(String element, Map<String, Integer> items) {
        return "<" + element + " count=\"" + items.size() + "\">" + String.join("", items.keySet()) + "</" + element
                + ">";
    }

    private static String font(int points, boolean bold) {
        return "<font>" + (bold ? "<b/>" : "") + "<sz val=\"" + points + "\"/><color rgb=\"FF000000\"/><name val=\""
                + Dress.TYPEFACE + "\"/><family val=\"2\"/></font>";
    }

    private static String fill(String band) {
        return band.isEmpty()
                ? "<fill><patternFill patternType=\"none\"/></fill>"
                : "<fill><patternFill patternType=\"solid\"><fgColor rgb=\"FF" + band
                        + "\"/><bgColor indexed=\"64\"/></patternFill></fill>";
    }

    private static String border(Dress dress) {
        return "<border>" + rule("left", dress.left()) + rule("right", dress.right()) + rule("top", dress.top())
                + rule("bottom", dress.bottom()) + "<diagonal/></border>";
    }

    private static String rule(String side, String style) {
        return style.isEmpty()
                ? "<" + side + "/>"
                : "<" + side + " style=\"" + style + "\"><color rgb=\"FF000000\"/></" + side + ">";
    }

    private static String vertical(Look look) {
        return switch (look) {
            case TITLE, HEADING, LABEL, VALUE, COLUMN_HEADING, SIGNATURE -> "bottom";
            case NOTE, CAUTION, PLAIN, GROUP, SUBTOTAL, TOTAL, HANDWRITTEN -> "center";
        };
    }

    private static String horizontal(Face.Set set) {
        return switch (set) {
            case LEFT -> "left\"";
            case INDENTED -> "left\" indent=\"1\"";
            case RIGHT -> "right\"";
            case CENTER -> "center\"";
        };
    }
}

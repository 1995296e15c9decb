package boltlore.grid.ods;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The tables of a content.xml, read from its first element to its last. */
final class OdsTables {

    /** More than a list of parts can need; a file may repeat one cell a thousand million times in a line. */
    static final class TooLarge extends RuntimeException {
        private static final long serialVersionUID = 1L;

        static final String SAYS = "more than 200,000 cells, or more than 2,000 columns, with something in them";

        TooLarge() {
            super(SAYS);
        }
    }

    private static final int MOST_CELLS = 200_000;
    private static final int MOST_COLUMNS = 2_000;
    private static final int MOST_ROWS = 1_048_576;

    private final XMLStreamReader xml;
    private final List<Sheet> sheets = new ArrayList<>();
    private final Set<String> hiddenTables = new HashSet<>();
    private final Map<String, GridCell.Face> faces = new HashMap<>();
    private final List<Sheet.Line> lines = new ArrayList<>();
    private final List<Sheet.Merged> merged = new ArrayList<>();
    private int row;
    private int cells;
    private boolean filtered;

    OdsTables(XMLStreamReader xml) {
        this.xml = xml;
    }

    List<Sheet> read() throws XMLStreamException {
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD) {
                throw new XMLStreamException("A document type");
            }
            if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "style" -> style(attribute("name"));
                    case "table" -> table();
                    default -> {}
                }
            }
        }
        return List.copyOf(sheets);
    }

    private void style(String name) throws XMLStreamException {
        boolean bold = false;
        boolean struck = false;
        for (int depth = 1; depth > 0; ) {
            int event = xml.next();
            depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
            if (event == XMLStreamConstants.START_ELEMENT) {
                bold |= attribute("font-weight").equals("bold");
                String line = attribute("text-line-through-style");
                struck |= !line.isEmpty() && !line.equals("none");
                if (xml.getLocalName().equals("table-properties")
                        && attribute("display").equals("false")) {
                    hiddenTables.add(name);
                }
            }
        }
        faces.put(name, new GridCell.Face(bold, struck));
    }

    private void table() throws XMLStreamException {
        String name = attribute("name");
        boolean hidden = hiddenTables.contains(attribute("style-name"));
        lines.clear();
        merged.clear();
        row = 1;
        filtered = false;
        for (int depth = 1; depth > 0; ) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                if (xml.getLocalName().equals("table-row")) {
                    row();
                } else if (xml.getLocalName().equals("shapes")) {
                    skip();
                } else {
                    depth++;
                }
            }
        }
        sheets.add(Sheet.of(name, hidden, filtered, lines, merged));
    }

    private void row() throws XMLStreamException {
        int repeated = times("number-rows-repeated", MOST_ROWS);
        String visible = attribute("visibility");
        filtered |= visible.equals("filter");
        boolean hidden = visible.equals("filter") || visible.equals("collapse");
        List<GridCell> read = new ArrayList<>();
        while (xml.next() != XMLStreamConstants.END_ELEMENT) {
            if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                cell(read);
            }
        }
        while (!read.isEmpty() && read.get(read.size() - 1).isEmpty()) {
            read.remove(read.size() - 1);
        }
        if (!read.isEmpty()) {
            count((long) repeated * read.size());
            for (int i = 0; i < repeated; i++) {
                lines.add(new Sheet.Line(row + i, hidden, read));
            }
        }
        row = Math.min(MOST_ROWS, row + repeated);
    }

    private void count(long more) {
        if (cells + more > MOST_CELLS) {
            throw new TooLarge();
        }
        cells += (int) more;
    }

    private void cell(List<GridCell> read) throws XMLStreamException {
        int repeated = times("number-columns-repeated", MOST_COLUMNS);
        int across = times("number-columns-spanned", MOST_COLUMNS);
        int down = times("number-rows-spanned", MOST_ROWS);
        String type = attribute("value-type");
        String value = attribute("value").isEmpty() ? attribute("date-value") : attribute("value");
        String formula = attribute("formula");
        String currency = attribute("currency");
        GridCell.Face face = faces.getOrDefault(attribute("style-name"), GridCell.Face.PLAIN);
        int column = read.size();
        GridCell cell = cell(type, value, formula, currency, face, content());
        if (!cell.isEmpty() && across * down > 1) {
            merged.add(new Sheet.Merged(row, column, row + down - 1, column + across - 1));
        }
        // The last cell of a row is repeated to the edge of the sheet where it is empty.
        if (!cell.isEmpty() && column + repeated > MOST_COLUMNS) {
            throw new TooLarge();
        }
        for (int i = 0; i < repeated && column + i < MOST_COLUMNS; i++) {
            read.add(cell);
        }
    }

    private static GridCell cell(
            String type, String value, String formula, String currency, GridCell.Face face, String content) {
        if (formula.contains("file:") || formula.contains("DDE(")) {
            return GridCell.unread("a value from another file");
        }
        if ((content.startsWith("#") && !formula.isEmpty()) || content.startsWith("Err:")) {
            return GridCell.unread("the error " + content);
        }
        switch (type) {
            case "float", "currency", "percentage" -> {
                BigDecimal number = new BigDecimal(value).stripTrailingZeros();
                return new GridCell(GridCell.Kind.NUMBER, content, number, !formula.isEmpty(), currency, face);
            }
            case "date" -> {
                return new GridCell(GridCell.Kind.DATE, value, null, !formula.isEmpty(), "", face);
            }
            default -> {
                return GridCell.text(content, face);
            }
        }
    }

    /** The paragraphs of a cell; its comment, which holds paragraphs too, is passed over. */
    private String content() throws XMLStreamException {
        StringBuilder content = new StringBuilder();
        for (int depth = 1; depth > 0; ) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                switch (xml.getLocalName()) {
                    case "annotation", "frame" -> {
                        skip();
                        depth--;
                    }
                    case "s", "tab", "line-break", "p" -> content.append(' ');
                    default -> {}
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.CHARACTERS) {
                content.append(xml.getText());
            } else if (event == XMLStreamConstants.ENTITY_REFERENCE) {
                throw new XMLStreamException("An entity");
            }
        }
        return content.toString().strip();
    }

    private void skip() throws XMLStreamException {
        for (int depth = 1; depth > 0; ) {
            int event = xml.next();
            depth += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    private int times(String name, int most) {
        String value = attribute(name);
        return value.isEmpty() ? 1 : (int) Math.max(1, Math.min(most, Long.parseLong(value)));
    }

    /** The attribute of that local name, whatever its namespace; empty where there is none. */
    private String attribute(String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }
}

package boltlore.csv;

import java.util.ArrayList;
import java.util.List;

/** Takes a CSV text apart letter by letter. */
final class CsvScanner {

    private final String text;
    private final char separator;
    private final List<CsvText.Line> lines = new ArrayList<>();
    private final StringBuilder cell = new StringBuilder();
    private List<String> cells = new ArrayList<>();
    private boolean quoted;
    private int line = 1;
    private int begun = 1;

    CsvScanner(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    List<CsvText.Line> lines() {
        for (int i = 0; i < text.length(); i++) {
            boolean doubled = quoted && text.startsWith("\"\"", i);
            if (doubled) {
                cell.append('"');
                i++;
            } else {
                letter(text.charAt(i));
            }
        }
        endLine();
        return lines;
    }

    /** Whether the text ended within a quoted cell, as one does that was cut off. */
    boolean endedInQuotes() {
        return quoted;
    }

    private void letter(char letter) {
        line += letter == '\n' ? 1 : 0;
        if (letter == '"') {
            quoted = !quoted;
        } else if (!quoted && letter == separator) {
            endCell();
        } else if (!quoted && letter == '\n') {
            endLine();
        } else if (letter != '\r') {
            cell.append(letter);
        }
    }

    private void endCell() {
        cells.add(cell.toString().strip());
        cell.setLength(0);
    }

    private void endLine() {
        endCell();
        if (cells.stream().anyMatch(each -> !each.isEmpty())) {
            lines.add(new CsvText.Line(begun, List.copyOf(cells)));
        }
        cells = new ArrayList<>();
        begun = line;
    }
}

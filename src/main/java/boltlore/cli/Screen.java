package boltlore.cli;

import boltlore.faults.Fault;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Prints text for people within the terminal's width; bold only where the terminal and NO_COLOR allow it. */
final class Screen {

    /** The parser's own least width for help. */
    static final int LEAST_HELP = 60;

    private static final int USUAL_WIDTH = 100;
    private static final int LEAST_WIDTH = 40;

    private final PrintWriter out;
    private final int width;

    Screen(PrintWriter out) {
        this.out = out;
        this.width = widthOfTerminal();
    }

    /** As the launcher asked it from the terminal, or as the person set it. */
    static int widthOfTerminal() {
        return widthFrom(System.getenv("COLUMNS"));
    }

    private static int widthFrom(String columns) {
        try {
            return columns == null ? USUAL_WIDTH : Math.max(LEAST_WIDTH, Integer.parseInt(columns.strip()));
        } catch (NumberFormatException e) {
            return USUAL_WIDTH;
        }
    }

    int width() {
        return width;
    }

    void heading(String text) {
        out.println(Ansi.AUTO.enabled() ? "\u001B[1m" + text + "\u001B[0m" : text);
    }

    /** Asks, and leaves the answer on the same line. */
    void prompt(String text) {
        out.print(text);
        out.flush();
    }

    /** Prints lines as they are. */
    void text(String lines) {
        out.print(lines);
    }

    void line(String text) {
        out.println(text);
    }

    /** Prints a text wrapped at blanks, further lines indented by two more. */
    void wrapped(int indent, String text) {
        for (String row : Wrapped.rows(text, indent, width)) {
            out.println(row);
        }
    }

    /** Prints a short text and, from a column on, what is to be said of it. */
    void wrapped(int indent, String text, int column, String says) {
        int from = Math.max(column, indent + text.length() + 2);
        if (from + says.length() > width) {
            wrapped(indent, text);
            wrapped(indent + 4, says);
        } else {
            line(" ".repeat(indent) + text + " ".repeat(from - indent - text.length()) + says);
        }
    }

    void faults(List<Fault> faults) {
        for (Fault fault : faults) {
            line(FaultWords.of(fault));
        }
        line(faults.size() == 1 ? "1 fault." : faults.size() + " faults.");
    }

    void flush() {
        out.flush();
    }
}

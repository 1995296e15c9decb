package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.measure.Legible;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Prints text for people within the terminal's width; bold only where the terminal and NO_COLOR allow it. */
final class Screen {

    private static final int USUAL_WIDTH = 100;
    private static final int LEAST_WIDTH = 40;

    private final PrintWriter out;
    private final int width;

    Screen(PrintWriter out) {
        this.out = out;
        this.width = widthFrom(System.getenv("COLUMNS"));
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
        String legible = Legible.line(text);
        out.println(Ansi.AUTO.enabled() ? "\u001B[1m" + legible + "\u001B[0m" : legible);
    }

    /** Asks, and leaves the answer on the same line. */
    void prompt(String text) {
        out.print(Legible.lines(text));
        out.flush();
    }

    /** Prints lines as they are. */
    void text(String lines) {
        out.print(Legible.lines(lines));
    }

    void line(String text) {
        out.println(Legible.lines(text));
    }

    /** Prints a text wrapped at blanks, further lines indented by two more. */
    void wrapped(int indent, String text) {
        for (String row : Wrapped.rows(text, indent, width)) {
            out.println(Legible.line(row));
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

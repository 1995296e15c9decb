package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.measure.Legible;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Prints text for people within the terminal's width; bold only where the terminal and NO_COLOR allow it. */
final class Screen {

    /** The parser's own least width for help. */
    private static final int LEAST_HELP = 60;

    private static final int USUAL_WIDTH = 100;
    private static final int LEAST_WIDTH = 40;

    private final PrintWriter out;
    private final int width;

    /** No line is longer: the terminal's width, and no bound where the answer goes to a file or a program. */
    private final int longest;

    Screen(PrintWriter out) {
        this(out, false);
    }

    /** @param asIs whether lines stay whole, as those of JSON must */
    Screen(PrintWriter out, boolean asIs) {
        this.out = out;
        int terminal = terminal();
        this.width = terminal > 0 ? terminal : USUAL_WIDTH;
        this.longest = terminal > 0 && !asIs ? terminal : Integer.MAX_VALUE;
    }

    static int widthOfHelp() {
        int terminal = terminal();
        return terminal > 0 ? Math.max(LEAST_HELP, terminal) : USUAL_WIDTH;
    }

    /** As the launcher asked it from the terminal, or as the person set it; 0 where it is not known. */
    private static int terminal() {
        String columns = System.getenv("COLUMNS");
        try {
            return columns == null ? 0 : Math.max(LEAST_WIDTH, Integer.parseInt(columns.strip()));
        } catch (NumberFormatException e) {
            return 0;
        }
    }

    int width() {
        return width;
    }

    void heading(String text) {
        boolean bold = Ansi.AUTO.enabled();
        Wrapped.rows(text, longest).forEach(row -> out.println(bold ? "\u001B[1m" + row + "\u001B[0m" : row));
    }

    /** Asks, and leaves the answer on the same line. */
    void prompt(String text) {
        out.print(Legible.lines(text));
        out.flush();
    }

    /** Prints lines, none of them longer than the terminal is wide. */
    void text(String lines) {
        if (longest == Integer.MAX_VALUE) {
            out.print(lines);
        } else {
            lines.lines().forEach(this::line);
        }
    }

    void line(String text) {
        Wrapped.rows(text, longest).forEach(out::println);
    }

    /** Prints a text wrapped at blanks, further lines indented by two more. */
    void wrapped(int indent, String text) {
        Wrapped.rows(" ".repeat(indent) + text, width).forEach(out::println);
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
            line(FaultWords.say(fault));
        }
        line(faults.size() == 1 ? "1 fault." : faults.size() + " faults.");
    }

    void flush() {
        out.flush();
    }
}

package boltlore.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Lets through no character that steers a terminal or turns the direction of writing, but for line ends, tabs and the few styles that this program prints:
 * names, records and arguments come from others. What is held back is shown as JSON would escape it, so that an answer in
 * JSON keeps its meaning.
 */
final class TerminalWriter extends FilterWriter {

    private static final Pattern STEERING =
            Pattern.compile("(?!\u001B\\[(?:0|1|3|21|23|33|39)(?:;(?:0|1|3|21|23|33|39))*m)[\\p{Cc}&&[^\\n\\r\\t]]"
                    + "|[\\p{Cf}\\p{Zl}\\p{Zp}&&[^\\u00AD\\u200C\\u200D]]");

    TerminalWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        String part = text.substring(from, from + length);
        Matcher steering = STEERING.matcher(part);
        out.write(steering.find() ? steering.replaceAll(TerminalWriter::escaped) : part);
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(new String(text, from, length), 0, length);
    }

    @Override
    public void write(int letter) throws IOException {
        write(Character.toString(letter), 0, 1);
    }

    private static String escaped(MatchResult found) {
        return found.group()
                .chars()
                .mapToObj(unit -> Matcher.quoteReplacement(String.format(Locale.ROOT, "\\u%04x", unit)))
                .collect(Collectors.joining());
    }
}

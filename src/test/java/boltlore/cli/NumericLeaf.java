package boltlore.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A number in a file of JSON, bare or as a text.
 *
 * @param field the file's kind and the way to the number, without the numbers of list entries
 * @param place the way to it
 * @param key where the key of the number begins, or where the number itself does in a list
 * @param from where it begins
 * @param to behind its end
 */
record NumericLeaf(Path file, String field, String place, String written, int key, int from, int to) {

    /** What happens to a number between a sheet of paper and a file. */
    enum Slip {
        TENFOLD,
        TENTH,
        TWICE,
        LEFT_OUT
    }

    private static final JsonFactory FACTORY = new JsonFactory();
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** These are names, though they look like numbers. */
    private static final Set<String> NAMES = Set.of("hs", "propertyClass", "class", "section", "issue", "values");

    static Stream<NumericLeaf> in(Path folder, Path file) throws IOException {
        List<NumericLeaf> leaves = new ArrayList<>();
        String text = Files.readString(folder.resolve(file));
        int key = 0;
        try (JsonParser parser = FACTORY.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                int from = (int) parser.currentTokenLocation().getCharOffset();
                if (token == JsonToken.FIELD_NAME) {
                    key = from;
                } else if (token.isScalarValue()
                        && NUMBER.matcher(parser.getText()).matches()) {
                    String place = parser.getParsingContext().pathAsPointer().toString();
                    boolean inList = parser.getParsingContext().inArray();
                    int to = from + parser.getText().length() + (token == JsonToken.VALUE_STRING ? 2 : 0);
                    leaves.add(new NumericLeaf(
                            file, field(file, place), place, parser.getText(), inList ? from : key, from, to));
                }
            }
        }
        return leaves.stream().filter(leaf -> !NAMES.contains(leaf.name()));
    }

    static String field(Path file, String place) {
        String kind = file.toString()
                .replaceFirst("^parts/.*", "parts")
                .replaceFirst("^families/[^/]*/", "")
                .replaceFirst("^kit/.*", "kit");
        return kind + place.replaceAll("/\\d+", "").replace("/", " ");
    }

    private String name() {
        return field.substring(field.lastIndexOf(' ') + 1);
    }

    /** The file's text with that slip; the same where the slip changes nothing. */
    String with(Slip slip, String text) {
        BigDecimal number = new BigDecimal(written);
        return switch (slip) {
            case TENFOLD -> replaced(text, number.movePointRight(1));
            case TENTH -> replaced(text, number.movePointLeft(1));
            case TWICE -> replaced(text, number.add(number));
            case LEFT_OUT -> without(text);
        };
    }

    private String replaced(String text, BigDecimal other) {
        boolean bare = text.charAt(from) != '"';
        BigDecimal said = bare && !written.contains(".") ? other.setScale(0, RoundingMode.DOWN) : other;
        String number = said.stripTrailingZeros().toPlainString();
        return said.compareTo(new BigDecimal(written)) == 0
                ? text
                : text.substring(0, from) + (bare ? number : '"' + number + '"') + text.substring(to);
    }

    private String without(String text) {
        return key == from ? text : without(text, key, to);
    }

    /** A text of JSON without what stands from a key to the end of its value, and without the comma that parted it from others. */
    static String without(String text, int key, int to) {
        String before = text.substring(0, key);
        String after = text.substring(to);
        return after.stripLeading().startsWith(",")
                ? before + after.stripLeading().substring(1).stripLeading()
                : before.stripTrailing().replaceFirst(",$", "") + after;
    }
}

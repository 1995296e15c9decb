package boltlore.json;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Builds the tree of one JSON text from Jackson's tokens. */
final class TreeBuilder {

    /** Deepest nesting that is followed; a condition of a catalogue is rarely ten deep. */
    static final int DEEPEST = 64;

    /** Most values in one file, so that its tree fits into the memory of a small machine. */
    static final int MOST_VALUES = 200_000;

    /** Most items of one list; no shop has as many parts. */
    static final int MOST_ITEMS = 20_000;

    private static final int LONGEST_KEY = 200;
    private static final int LONGEST_NUMBER = 40;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNumberLength(1_000_000)
                    .maxStringLength((int) JsonFile.MOST_BYTES)
                    .maxNameLength((int) JsonFile.MOST_BYTES)
                    .build())
            .build();

    private final String file;
    private final Faults faults = new Faults();
    private @Nullable SourceLocation open;
    private boolean mayBeUnprintable;
    private int values;

    TreeBuilder(String file) {
        this.file = file;
    }

    Outcome<Json> build(String text) {
        char[] letters = text.toCharArray();
        mayBeUnprintable = Printable.isWorthChecking(text);
        try (JsonParser parser = FACTORY.createParser(letters)) {
            parser.nextToken();
            Json root = value(parser, SourceLocation.document(file, line(parser)), 0);
            if (parser.nextToken() != null) {
                faults.add(trailing(line(parser), parser.getText()));
            }
            return faults.orElse(root);
        } catch (TooMuch tooMuch) {
            faults.add(tooMuch.fault);
        } catch (JsonProcessingException broken) {
            faults.add(Syntax.fault(file, letters, broken, open));
        } catch (IOException impossible) {
            throw new AssertionError("Reading from memory", impossible);
        }
        return Outcome.faulty(faults.all());
    }

    private Json value(JsonParser parser, SourceLocation location, int depth) throws IOException {
        if (++values > MOST_VALUES) {
            throw new TooMuch(location.fault(
                    "more than " + MOST_VALUES + " values in one file",
                    "at most " + MOST_VALUES,
                    "Split the file, or check that it is the one you meant."));
        }
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser, location, depth + 1);
            case START_ARRAY -> array(parser, location, depth + 1);
            case VALUE_STRING -> text(parser.getText(), location);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser.getText(), location);
            case VALUE_TRUE -> new Json.Truth(location, true);
            case VALUE_FALSE -> new Json.Truth(location, false);
            default -> new Json.Nothing(location);
        };
    }

    private Json object(JsonParser parser, SourceLocation location, int depth) throws IOException {
        SourceLocation around = enter(location, depth);
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            key(key, location);
            parser.nextToken();
            Json member = value(parser, location.at(key, line(parser)), depth);
            Json before = members.putIfAbsent(key, member);
            if (before != null) {
                faults.add(member.location()
                        .fault(
                                Preview.text(key) + " a second time; it already stands in line "
                                        + before.location().line(),
                                "each key once in an object",
                                "Remove one of the two."));
            }
        }
        open = around;
        return new Json.Obj(location, Collections.unmodifiableMap(members));
    }

    private void key(String key, SourceLocation location) throws TooMuch {
        if (mayBeUnprintable) {
            Printable.check(key, location, faults);
        }
        if (key.length() > LONGEST_KEY) {
            throw new TooMuch(location.fault(
                    "a key of " + key.length() + " characters",
                    "at most " + LONGEST_KEY,
                    "Check the quotes before it."));
        }
    }

    private Json array(JsonParser parser, SourceLocation location, int depth) throws IOException {
        SourceLocation around = enter(location, depth);
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (items.size() == MOST_ITEMS) {
                throw new TooMuch(location.fault(
                        "a list of more than " + MOST_ITEMS + " items",
                        "at most " + MOST_ITEMS,
                        "Split it over several files, where the file may be split, or shorten it."));
            }
            items.add(value(parser, location.at(items.size(), line(parser)), depth));
        }
        open = around;
        return new Json.Arr(location, Collections.unmodifiableList(items));
    }

    private @Nullable SourceLocation enter(SourceLocation location, int depth) throws TooMuch {
        if (depth > DEEPEST) {
            throw new TooMuch(location.fault(
                    "values nested more than " + DEEPEST + " deep", "at most " + DEEPEST + " levels", "Flatten it."));
        }
        SourceLocation around = open;
        open = location;
        return around;
    }

    private Json text(String text, SourceLocation location) {
        if (mayBeUnprintable) {
            Printable.check(text, location, faults);
        }
        return new Json.Text(location, text);
    }

    private Json number(String written, SourceLocation location) {
        int exponent = Math.max(written.indexOf('e'), written.indexOf('E'));
        // 1e999999999 is short to write and fills the memory as soon as someone adds to it.
        boolean huge = written.length() > LONGEST_NUMBER || (exponent >= 0 && isLong(written.substring(exponent + 1)));
        if (huge) {
            faults.add(location.fault(
                    "the number " + Preview.text(written),
                    "a number of at most " + LONGEST_NUMBER + " characters and an exponent of at most two digits",
                    "Write it in plain digits."));
        }
        return new Json.Num(location, huge ? BigDecimal.ZERO : new BigDecimal(written));
    }

    private static boolean isLong(String exponent) {
        return exponent.length() > (exponent.startsWith("-") || exponent.startsWith("+") ? 3 : 2);
    }

    private Fault trailing(int line, String found) {
        return new Fault(
                file,
                line,
                "",
                Preview.text(found) + " after the end of the JSON value",
                "one JSON value and nothing after it",
                "Remove what follows, or a closing bracket too many before it.");
    }

    private static int line(JsonParser parser) {
        return parser.currentTokenLocation().getLineNr();
    }

    /** Leaves the recursion at once; never gets out of this class. */
    private static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;
        private final transient Fault fault;

        TooMuch(Fault fault) {
            this.fault = fault;
        }
    }
}

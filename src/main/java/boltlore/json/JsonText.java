package boltlore.json;

import boltlore.measure.Legible;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * JSON (RFC 8259), written down from its first character to its last by Jackson's generator. An object or a list stands
 * in one line, or, broken, with each of its values in a line of its own. What is not legible is written as an escape.
 */
public final class JsonText {

    private static final JsonFactory FACTORY = new JsonFactory();
    private static final CharacterEscapes LEGIBLE = new Escapes(false);
    private static final CharacterEscapes NO_SURROGATES = new Escapes(true);

    /** A key of many objects, made ready once. */
    public static final class Key {
        private final SerializedString text;

        public Key(String text) {
            this.text = new SerializedString(text);
        }
    }

    /** Step of the writer that may fail; writing to memory does not. */
    private interface Step {
        void write(JsonGenerator generator) throws IOException;
    }

    /** The same of something: made once, where a step that holds it would be made anew for each. */
    private interface StepOf<T> {
        void write(JsonGenerator generator, T what) throws IOException;
    }

    private final StringWriter text = new StringWriter();
    private final Lines lines;
    private final JsonGenerator generator;

    /** @param indent blanks before a value of a broken object or list, for each one around it */
    public JsonText(int indent) {
        this(indent, 0);
    }

    /** @param depth objects and lists around all that is written */
    JsonText(int indent, int depth) {
        this.lines = new Lines(indent, depth);
        try {
            this.generator = FACTORY.createGenerator(text);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Writing to memory", impossible);
        }
        generator.setPrettyPrinter(lines);
    }

    public JsonText object() {
        lines.next = false;
        return step(JsonGenerator::writeStartObject);
    }

    public JsonText brokenObject() {
        lines.next = true;
        return step(JsonGenerator::writeStartObject);
    }

    public JsonText list() {
        lines.next = false;
        return step(JsonGenerator::writeStartArray);
    }

    public JsonText brokenList() {
        lines.next = true;
        return step(JsonGenerator::writeStartArray);
    }

    /** Closes the object or list that was opened last. */
    public JsonText end() {
        return generator.getOutputContext().inArray()
                ? step(JsonGenerator::writeEndArray)
                : step(JsonGenerator::writeEndObject);
    }

    /** Begins a member of an object; its value comes next. */
    public JsonText key(String key) {
        return step((to, name) -> to.setCharacterEscapes(escapes(name)).writeFieldName(name), key);
    }

    public JsonText key(Key key) {
        return step(JsonGenerator::writeFieldName, key.text);
    }

    public JsonText text(String value) {
        return step((to, said) -> to.setCharacterEscapes(escapes(said)).writeString(said), value);
    }

    public JsonText nothing() {
        return step(JsonGenerator::writeNull);
    }

    /** A number or truth as it stands in the text. */
    JsonText literal(String literal) {
        return step(JsonGenerator::writeRawValue, literal);
    }

    public JsonText put(String key, String value) {
        return key(key).text(value);
    }

    /** All that was written. */
    public String written() {
        step(JsonGenerator::flush);
        return text.toString();
    }

    private JsonText step(Step step) {
        return step((to, each) -> each.write(to), step);
    }

    private <T> JsonText step(StepOf<T> step, T what) {
        try {
            step.write(generator, what);
            return this;
        } catch (IOException impossible) {
            throw new UncheckedIOException("Writing to memory", impossible);
        }
    }

    private static CharacterEscapes escapes(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isSurrogate(text.charAt(i))) {
                return text.codePoints().anyMatch(JsonText::isOdd) ? NO_SURROGATES : LEGIBLE;
            }
        }
        return LEGIBLE;
    }

    /** Half of a pair of surrogates, which UTF-8 cannot hold, or a pair that is not legible. */
    private static boolean isOdd(int character) {
        return (character > 0xFFFF || (character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE))
                && !Legible.is(character);
    }

    /** Characters that a text takes in JSON, its quotes included. */
    static int width(String text) {
        boolean odd = escapes(text) == NO_SURROGATES;
        int width = 2;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (isPlain(letter)) {
                width++;
            } else if ("\"\\\b\f\n\r\t".indexOf(letter) >= 0) {
                width += 2;
            } else {
                width += isEscaped(letter, odd) ? 6 : 1;
            }
        }
        return width;
    }

    private static boolean isPlain(char letter) {
        return letter >= ' ' && letter <= '~' && letter != '"' && letter != '\\';
    }

    private static boolean isEscaped(int letter, boolean surrogates) {
        return Character.isSurrogate((char) letter) ? surrogates : !Legible.is(letter);
    }

    private static final class Escapes extends CharacterEscapes {
        private static final long serialVersionUID = 1L;
        private final boolean surrogates;
        private final int[] ascii = standardAsciiEscapesForJSON();

        Escapes(boolean surrogates) {
            this.surrogates = surrogates;
            ascii['\u007F'] = ESCAPE_STANDARD;
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ascii;
        }

        @Override
        public @Nullable SerializableString getEscapeSequence(int letter) {
            return letter > '~' && isEscaped(letter, surrogates)
                    ? new SerializedString(String.format(Locale.ROOT, "\\u%04X", letter))
                    : null;
        }
    }

    /** Blanks and line breaks between the values. */
    private static final class Lines implements PrettyPrinter {
        private final int indent;
        private final int around;
        private final Deque<Boolean> broken = new ArrayDeque<>();
        private boolean next;

        Lines(int indent, int around) {
            this.indent = indent;
            this.around = around;
        }

        @Override
        public void writeRootValueSeparator(JsonGenerator to) throws IOException {
            to.writeRaw('\n');
        }

        @Override
        public void writeStartObject(JsonGenerator to) throws IOException {
            open(to, '{');
        }

        @Override
        public void writeEndObject(JsonGenerator to, int entries) throws IOException {
            close(to, entries, '}');
        }

        @Override
        public void writeObjectEntrySeparator(JsonGenerator to) throws IOException {
            between(to);
        }

        @Override
        public void writeObjectFieldValueSeparator(JsonGenerator to) throws IOException {
            to.writeRaw(": ");
        }

        @Override
        public void beforeObjectEntries(JsonGenerator to) throws IOException {
            first(to);
        }

        @Override
        public void writeStartArray(JsonGenerator to) throws IOException {
            open(to, '[');
        }

        @Override
        public void writeEndArray(JsonGenerator to, int values) throws IOException {
            close(to, values, ']');
        }

        @Override
        public void writeArrayValueSeparator(JsonGenerator to) throws IOException {
            between(to);
        }

        @Override
        public void beforeArrayValues(JsonGenerator to) throws IOException {
            first(to);
        }

        private void open(JsonGenerator to, char sign) throws IOException {
            broken.push(next);
            to.writeRaw(sign);
        }

        private void close(JsonGenerator to, int entries, char sign) throws IOException {
            if (broken.pop() && entries > 0) {
                line(to, broken.size());
            }
            to.writeRaw(sign);
        }

        private void first(JsonGenerator to) throws IOException {
            if (broken.element()) {
                line(to, broken.size());
            }
        }

        private void between(JsonGenerator to) throws IOException {
            to.writeRaw(',');
            if (broken.element()) {
                line(to, broken.size());
            } else {
                to.writeRaw(' ');
            }
        }

        private void line(JsonGenerator to, int depth) throws IOException {
            to.writeRaw('\n');
            for (int blanks = indent * (around + depth); blanks > 0; blanks--) {
                to.writeRaw(' ');
            }
        }
    }
}

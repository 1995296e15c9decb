package boltlore.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands. Objects keep the order of the file. */
public sealed interface Json {

    SourceLocation location();

    record Obj(SourceLocation location, Map<String, Json> members) implements Json {
        @Override
        public String shown() {
            return members.isEmpty() ? "an empty object" : "an object";
        }
    }

    record Arr(SourceLocation location, List<Json> items) implements Json {
        @Override
        public String shown() {
            return items.isEmpty() ? "an empty list" : "a list";
        }
    }

    record Text(SourceLocation location, String text) implements Json {
        @Override
        public String shown() {
            return Preview.text(text);
        }
    }

    /** A number as it was written, never through binary floating point. */
    record Num(SourceLocation location, BigDecimal number) implements Json {
        @Override
        public String shown() {
            return Preview.number(number);
        }
    }

    record Truth(SourceLocation location, boolean truth) implements Json {
        @Override
        public String shown() {
            return Boolean.toString(truth);
        }
    }

    record Nothing(SourceLocation location) implements Json {
        @Override
        public String shown() {
            return "null";
        }
    }

    /** The value in a few words, for the 'found' of a fault. */
    String shown();
}

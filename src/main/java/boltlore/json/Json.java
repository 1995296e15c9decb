package boltlore.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands. Objects keep the order of the file. */
public sealed interface Json {

    Spot spot();

    record Obj(Spot spot, Map<String, Json> members) implements Json {
        @Override
        public String shown() {
            return members.isEmpty() ? "an empty object" : "an object";
        }
    }

    record Arr(Spot spot, List<Json> items) implements Json {
        @Override
        public String shown() {
            return items.isEmpty() ? "an empty list" : "a list";
        }
    }

    record Text(Spot spot, String text) implements Json {
        @Override
        public String shown() {
            return Shown.text(text);
        }
    }

    /** A number as it was written, never through binary floating point. */
    record Num(Spot spot, BigDecimal number) implements Json {
        @Override
        public String shown() {
            return Shown.number(number);
        }
    }

    record Truth(Spot spot, boolean truth) implements Json {
        @Override
        public String shown() {
            return Boolean.toString(truth);
        }
    }

    record Nothing(Spot spot) implements Json {
        @Override
        public String shown() {
            return "null";
        }
    }

    /** The value in a few words, for the 'found' of a fault. */
    String shown();
}

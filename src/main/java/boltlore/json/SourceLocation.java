package boltlore.json;

import boltlore.faults.Fault;
import org.jspecify.annotations.Nullable;

/**
 * Where something stands in a JSON file.
 *
 * @param file the file as the user named it
 * @param line line from 1
 * @param within the object or array around it, or null for the whole document
 * @param step key or index inside the surrounding value
 */
public record SourceLocation(
        String file, int line, @Nullable SourceLocation within, String step) {

    /** The whole document. */
    public static SourceLocation document(String file, int line) {
        return new SourceLocation(file, line, null, "");
    }

    public SourceLocation at(String key, int lineOfIt) {
        return new SourceLocation(file, lineOfIt, this, key);
    }

    public SourceLocation at(int index, int lineOfIt) {
        return new SourceLocation(file, lineOfIt, this, Integer.toString(index));
    }

    /** JSON pointer (RFC 6901); empty for the whole document. */
    public String pointer() {
        if (within == null) {
            return "";
        }
        return within.pointer() + "/" + step.replace("~", "~0").replace("/", "~1");
    }

    public Fault fault(String found, String expected, String advice) {
        return new Fault(file, line, pointer(), found, expected, advice);
    }
}

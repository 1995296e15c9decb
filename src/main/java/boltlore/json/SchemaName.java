package boltlore.json;

/** The {@code $schema} of a file: what an editor helps with must be what the program reads. */
public final class SchemaName {

    private static final String KEY = "$schema";

    private SchemaName() {}

    /** A fault where the file names another schema than that of its kind; naming none is allowed. */
    public static void check(ObjectReader reader, String schema) {
        reader.findText(KEY).ifPresent(named -> {
            if (!named.substring(named.lastIndexOf('/') + 1).equals(schema)) {
                reader.faultAt(
                        KEY,
                        Preview.text(named),
                        "a path to " + schema,
                        "Check that the file stands in the right place.");
            }
        });
    }
}

package boltlore.catalogue;

import boltlore.measure.Wording;
import org.jspecify.annotations.Nullable;

/**
 * A drawing, photo, data sheet, certificate or instruction that belongs to a part or a position.
 *
 * @param file path within the catalogue folder, '/' between its steps; null where only a number leads to it
 * @param number reference number under which it is filed; null where the file is enough
 * @param issue of the document; null where it has none
 */
public record Document(
        Kind kind,
        @Nullable String file,
        @Nullable String number,
        @Nullable String issue,
        Wording says) {

    /** What a document is. */
    public enum Kind {
        DRAWING("drawing"),
        PHOTO("photo"),
        DATA_SHEET("data-sheet"),
        CERTIFICATE("certificate"),
        INSTRUCTION("instruction");

        private final String written;

        Kind(String written) {
            this.written = written;
        }

        public String written() {
            return written;
        }
    }
}

package boltlore.exports;

import java.nio.file.Path;
import java.util.List;

/**
 * What a run has written.
 *
 * @param files where each file stands, in the order given
 * @param kept a sentence for each file that stayed, because somebody had changed it or another kind of run had written it,
 *     and for those of other orders that made room
 */
public record Written(List<Path> files, List<String> kept) {

    public Written {
        files = List.copyOf(files);
        kept = List.copyOf(kept);
    }
}

package boltlore.exports;

import java.nio.file.Path;
import java.util.List;

/**
 * What a run has written.
 *
 * @param files where each file stands, in the order given
 * @param kept a sentence for each file that somebody had changed and that therefore stayed
 */
public record Written(List<Path> files, List<String> kept) {

    public Written {
        files = List.copyOf(files);
        kept = List.copyOf(kept);
    }
}

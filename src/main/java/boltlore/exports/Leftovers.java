package boltlore.exports;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** What runs that were killed have left: known by the journal that lies in it, and dead by the journal's free lock. */
final class Leftovers {

    /** How the names of folders begin that have not got their own name yet. */
    static final String ASIDE = Inside.HIDDEN + "-";

    private static final Set<Path> SETTLED = new HashSet<>();

    private Leftovers() {}

    /**
     * Settles what dead runs have left in any folder of this one; a process does so once, before it writes there itself.
     * What cannot be settled from here waits for a run that writes into that very folder.
     */
    static synchronized void settleAllIn(Path parent) {
        if (!SETTLED.add(parent)) {
            return;
        }
        try (DirectoryStream<Path> all = Files.newDirectoryStream(parent)) {
            for (Path folder : all) {
                Inside inside = new Inside(folder);
                if (Inside.isFolder(inside.hidden()) && Inside.there(inside.journal()) && isOwn(folder)) {
                    settle(inside);
                }
                // A run may be killed before it has written anything into its folder.
                if (folder.getFileName().toString().startsWith(ASIDE) && Inside.isFolder(folder)) {
                    if (Inside.isFolder(inside.hidden())) {
                        Inside.deletedIfEmpty(inside.hidden());
                    }
                    Inside.deletedIfEmpty(folder);
                }
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            return;
        }
    }

    /** In a place that many write to, what another person has put there is not acted on. */
    private static boolean isOwn(Path folder) throws IOException {
        UserPrincipal me = folder.getFileSystem()
                .getUserPrincipalLookupService()
                .lookupPrincipalByName(System.getProperty("user.name"));
        return me.equals(Files.getOwner(folder, LinkOption.NOFOLLOW_LINKS));
    }

    private static void settle(Inside folder) {
        try {
            Optional<Journal> dead = Journal.ofDeadRun(folder);
            if (dead.isPresent()) {
                try (Journal journal = dead.get()) {
                    settle(folder, journal);
                }
            }
        } catch (IOException notFromHere) {
            return;
        }
    }

    /** Ends what the journal's dead run had begun in the folder. */
    static void settle(Inside folder, Journal journal) throws IOException {
        if (journal.leftAside()) {
            Inside.delete(folder.folder());
        } else {
            Optional<Moves> moves = journal.leftMoves();
            if (moves.isPresent()) {
                moves.get().settle(folder);
            } else {
                Moves.clearAside(folder);
            }
        }
        journal.settled();
    }
}

package boltlore.book.db;

import boltlore.faults.Fault;
import java.sql.SQLException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteException;

/** What a database complains of, in the few cases that differ in what a person has to do. */
enum Trouble {
    /** Somebody else wrote at the same time: the transaction is worth trying again. */
    CONFLICT(
            "another desk that writes all the time",
            "a moment in which this desk can write",
            "Try again; nothing was written."),
    FULL("a disk without room", "room for the entry", "Make room on that disk and try again; nothing was written."),
    READ_ONLY(
            "a book that may only be read",
            "a book that may be written",
            "Look at the permissions of file and folder, or of the user on the server; nothing was written."),
    DAMAGED(
            "something that is no book, or a damaged one",
            "a book of Boltlore",
            "Check the name. If it is the right one, leave it as it is and restore the last backup beside it."),
    UNREACHABLE(
            "a database that cannot be reached, or went away",
            "a database that answers",
            "See that it runs and that address, user and password are right, and try again; nothing was written."),
    BROKEN_DISK(
            "a disk that reports an error, or a limit on the size of files",
            "a disk that reads and writes",
            "Look at the disk before anything else; nothing was written."),
    MOVED(
            "no file any more, or another one than this desk opened",
            "the book that this desk opened, with the files that stand beside it",
            "Somebody moved, removed or replaced it. Put it back and try again, or end this desk and start it anew;"
                    + " nothing was written."),
    NO_LIBRARY(
            "SQLite's own library, which cannot be unpacked or loaded here",
            "a folder for temporary files with room, from which programs may be loaded",
            "Make room there, or name another folder with BOLTLORE_JVM_FLAGS=-Dorg.sqlite.tmpdir=FOLDER."),
    /** A mistake of this program. */
    DEFECT("", "", "");

    private final String found;
    private final String expected;
    private final String advice;

    Trouble(String found, String expected, String advice) {
        this.found = found;
        this.expected = expected;
        this.advice = advice;
    }

    Fault at(Place place) {
        return Fault.of(place.shown(), found, expected, advice);
    }

    /** By the innermost cause that says something: a pool tells only that it waited in vain. */
    static Trouble of(Throwable thrown) {
        Trouble found = DEFECT;
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            Trouble here = each instanceof SQLiteException sqlite
                    ? ofFile(sqlite)
                    : each instanceof SQLException server ? ofServer(server) : DEFECT;
            found = here == DEFECT ? found : here;
        }
        return found;
    }

    private static Trouble ofFile(SQLiteException thrown) {
        String code = thrown.getResultCode().name().replaceFirst("^SQLITE_", "");
        if (code.startsWith("BUSY") || code.startsWith("LOCKED")) {
            return CONFLICT;
        }
        if (code.startsWith("READONLY") || code.startsWith("PERM") || code.startsWith("AUTH")) {
            return READ_ONLY;
        }
        if (code.startsWith("CORRUPT") || code.startsWith("NOTADB")) {
            return DAMAGED;
        }
        if (code.startsWith("CANTOPEN")) {
            return UNREACHABLE;
        }
        return code.startsWith("FULL") ? FULL : code.startsWith("IOERR") ? BROKEN_DISK : DEFECT;
    }

    /** By the codes of ISO/IEC 9075 and PostgreSQL's own (its manual, appendix A). */
    private static Trouble ofServer(SQLException thrown) {
        @Nullable String state = thrown.getSQLState();
        if (state == null) {
            return thrown instanceof java.sql.SQLTransientConnectionException ? UNREACHABLE : DEFECT;
        }
        return switch (state) {
            case "40001", "40P01" -> CONFLICT;
            case "53100" -> FULL;
            case "25006", "42501" -> READ_ONLY;
            case "3D000", "53300" -> UNREACHABLE;
            case "XX001", "XX002" -> DAMAGED;
            default -> {
                String kind = state.substring(0, 2).toUpperCase(Locale.ROOT);
                boolean gone = kind.equals("08") || kind.equals("57") || kind.equals("28");
                yield gone ? UNREACHABLE : DEFECT;
            }
        };
    }
}

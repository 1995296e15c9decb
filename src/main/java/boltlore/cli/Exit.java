package boltlore.cli;

/** The exit codes, as the README documents them. */
final class Exit {

    /** Done; nothing stops. */
    static final int OK = 0;

    /** An order's choices or findings stop its sheets. */
    static final int STOPPED = 1;

    /** Wrong command or option. */
    static final int USAGE = 2;

    /** A catalogue or order has faults. */
    static final int FAULTS = 3;

    /** A result could not be written. */
    static final int NOT_WRITTEN = 4;

    /** A proof was left undecided. */
    static final int UNDECIDED = 5;

    /** The book cannot be opened, reached or written. */
    static final int NO_BOOK = 6;

    /** Questions are open that somebody must answer first. */
    static final int OPEN = 7;

    /** Internal error, or a library is missing or damaged. */
    static final int DEFECT = 70;

    /** Whoever read the answer ended first: what a shell says of a program that SIGPIPE, signal 13, ended (128 + 13). */
    static final int READER_GONE = 141;

    private Exit() {}
}

package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.json.JsonOut;
import boltlore.logic.Deadline;
import java.util.List;

/** What the command 'prove' can be asked to do with families. */
interface ProofTask {

    /** Does it until the time is up, and writes what files are asked for. */
    Done done(Deadline until, ProofProgress progress);

    /** What came of it, to be printed. */
    interface Done {

        JsonOut json();

        void print(Screen screen);

        int exit();

        /** Files that could not be written. */
        List<Fault> faults();
    }
}

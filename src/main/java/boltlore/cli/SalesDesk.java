package boltlore.cli;

import boltlore.choices.Choices;
import boltlore.choosing.BestKits;
import boltlore.choosing.Chooser;
import boltlore.choosing.FamilyQuestions;
import boltlore.choosing.Importance;
import boltlore.choosing.Repairer;
import boltlore.logic.Deadline;

/** All that is asked of while choosing in one family. */
record SalesDesk(
        Choices choices,
        Importance importance,
        Chooser chooser,
        BestKits best,
        Repairer repairer,
        FamilyQuestions questions,
        Deadline time) {

    /**
     * For these choices.
     *
     * @param deadline of figures and repairs
     * @param reasons until when open values and reasons are wanted
     */
    static SalesDesk of(Bench bench, AskedChoices.Given given, Deadline deadline, Deadline reasons) {
        Chooser chooser = new Chooser(given.family(), reasons);
        BestKits best = new BestKits(bench.resolver().resolver(), given.family(), deadline);
        return new SalesDesk(
                given.choices(),
                given.importance(),
                chooser,
                best,
                new Repairer(chooser, best),
                new FamilyQuestions(bench.catalogue(), chooser, deadline),
                deadline);
    }
}

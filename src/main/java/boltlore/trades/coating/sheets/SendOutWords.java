package boltlore.trades.coating.sheets;

import boltlore.catalogue.Coats;
import boltlore.catalogue.Finish;
import boltlore.trades.coating.SendOut;
import java.util.stream.Collectors;

/** What a coater is told. */
final class SendOutWords {

    private SendOutWords() {}

    /** Powder, film and cure of each coat, for a coater who puts on a finish of ours. */
    static String powder(Finish finish) {
        return finish.coats().stream().map(SendOutWords::coat).collect(Collectors.joining("; then "));
    }

    private static String coat(Coats coat) {
        return coat.powder() + " " + coat.filmMinUm() + "–" + coat.filmMaxUm() + " µm, " + CoatWords.cure(coat);
    }

    static String masks(SendOut sendOut) {
        if (PartsTable.masks(sendOut.rows()) == 0) {
            return "No piece is masked. Film and its certificate as the order to the coater says.";
        }
        String who = sendOut.coater().fitsMasks()
                ? "The coater fits the masks that the table names"
                : "We fit the masks before the pieces leave and count them off when they are back";
        return who + ". Threads, faces and earth points named as masked come back bare; film and its certificate as the"
                + " order to the coater says.";
    }
}

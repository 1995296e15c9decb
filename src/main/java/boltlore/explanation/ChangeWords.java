package boltlore.explanation;

import boltlore.catalogue.Change;

/** Says an entry in the history of a part or a line. */
public final class ChangeWords {

    private ChangeWords() {}

    /** 'revision C of 2026-03-01: Shorter. Why: It rubbed. Approved by M. Fitter.'. */
    public static String say(Change change) {
        String revision = change.revision() == null ? "" : "revision " + change.revision() + " of ";
        return revision + change.date() + ": " + sentence(change.says()) + " Why: " + sentence(change.because())
                + " Approved by " + change.approvedBy() + ".";
    }

    private static String sentence(String text) {
        return text.endsWith(".") || text.endsWith("!") ? text : text + ".";
    }
}

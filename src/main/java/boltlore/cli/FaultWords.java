package boltlore.cli;

import boltlore.faults.Fault;

/** Says a fault in one line: where, what stands there, what is expected, what to do. */
final class FaultWords {

    /** No sentence of ours is longer; what is was typed or read, and its beginning tells which it is. */
    private static final int LONGEST = 1500;

    private FaultWords() {}

    private static String shortened(String found) {
        return found.length() > LONGEST ? found.substring(0, LONGEST) + "…'" : found;
    }

    static String say(Fault fault) {
        StringBuilder words = new StringBuilder(
                // A name may hold line breaks; nothing behind one may look like a sentence of ours.
                fault.file().replace("\n", "\\n").replace("\r", "\\r"));
        if (fault.line() > 0) {
            words.append(':').append(fault.line());
        }
        if (!fault.place().isEmpty()) {
            words.append(words.isEmpty() ? "" : " ").append(fault.place());
        }
        words.append(words.isEmpty() ? "" : ": ").append("found ").append(shortened(fault.found()));
        if (!fault.expected().isEmpty()) {
            words.append("; expected ").append(fault.expected());
        }
        if (!fault.advice().isEmpty()) {
            words.append(". ").append(fault.advice());
        }
        return words.append(fault.advice().endsWith("?") || fault.advice().endsWith(".") ? "" : ".")
                .toString();
    }
}

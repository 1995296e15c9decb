package boltlore.desk.frame;

import boltlore.book.Entry;
import boltlore.faults.Fault;
import boltlore.report.SheetFile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a room answers to a call. */
public sealed interface Answer {

    /**
     * A page.
     *
     * @param title in the browser's head, and the page's own heading
     * @param template its place below the templates, as "stores/today.jte"
     * @param page the template's model
     * @param refused what was not done, and why, in sentences; none where the page was only asked for
     * @param fields of the form that was refused, each with its sentence, the first one first
     */
    record Shown(String title, String template, Object page, List<String> refused, Map<String, String> fields)
            implements Answer {

        /** The page under what was refused. */
        public Shown refusing(List<String> sentences) {
            return new Shown(title, template, page, List.copyOf(sentences), Map.of());
        }

        /** The page under what was refused, and fields that it belongs to with it. */
        public Shown refused(List<Fault> faults) {
            Map<String, String> at = new LinkedHashMap<>();
            faults.stream()
                    .filter(fault -> fault.file().startsWith(Typed.FIELD))
                    .forEach(
                            fault -> at.putIfAbsent(fault.file().substring(Typed.FIELD.length()), Sentences.of(fault)));
            List<String> sentences = Sentences.of(faults).stream().distinct().toList();
            return new Shown(title, template, page, sentences, at);
        }
    }

    /**
     * Something was done; the browser is sent to the page that shows it, so that reloading that does nothing again.
     *
     * @param path below this desk, as "/stores"
     */
    record Done(String path) implements Answer {}

    /**
     * The form has done its work before, and says something else now; nothing was done.
     *
     * @param first entry that it left then
     * @param path where that is seen
     */
    record SentAlready(Entry first, String path) implements Answer {

        /** What became of the form, and what to do. */
        public String says() {
            return "This form was sent already: " + Told.says(first)
                    + " What it says now differs, and nothing was changed."
                    + " If what was written is wrong, take that back or correct it; for further work open the page anew.";
        }
    }

    /** A file to keep. */
    record Handed(SheetFile file) implements Answer {}

    /**
     * There is no such thing.
     *
     * @param says what there is none of, in a sentence
     */
    record Missing(String says) implements Answer {}

    static Shown page(String title, String template, Object page) {
        return new Shown(title, template, page, List.of(), Map.of());
    }
}

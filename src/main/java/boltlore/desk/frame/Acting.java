package boltlore.desk.frame;

import boltlore.book.By;
import boltlore.book.db.DoneBefore;
import boltlore.book.db.Written;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Does what a form says, once: each form carries a key that the book keeps with the first entry that it leaves. The same form
 * sent again – the line broke, the page was reloaded, two fingers were too quick – is answered as the first time.
 */
public final class Acting {

    private static final Pattern KEY = Pattern.compile("[A-Za-z0-9_-]{43}");

    private Acting() {}

    /**
     * Sends the browser to a page, with the entries that were made; or shows the page that the form stood on, with what was
     * refused.
     *
     * @param path where the work is seen, with its query
     * @param work one call of the book
     * @param page the page that the form stood on
     */
    public static <T> Answer done(
            Call call, String path, Function<By, Outcome<Written<T>>> work, Function<Call, Answer> page) {
        if (!KEY.matcher(call.said(Guard.ONCE)).matches()) {
            return refused(
                    page.apply(call),
                    List.of(Fault.of("", "a form without its key", "", "Open the page anew, and fill it in again.")));
        }
        try {
            Outcome<Written<T>> outcome = work.apply(call.by());
            return outcome instanceof Outcome.Sound<Written<T>> written
                    ? new Answer.Done(
                            written.value().entries().isEmpty()
                                    ? path
                                    : after(
                                            path,
                                            written.value().entries().get(0).number()))
                    : refused(page.apply(call), outcome.faults());
        } catch (DoneBefore before) {
            String landed = after(path, before.entry());
            return before.changed() ? new Answer.SentAlready(before.first(), landed) : new Answer.Done(landed);
        }
    }

    /** What was not understood is refused before anything is done. */
    public static Answer refused(Answer page, List<Fault> faults) {
        return page instanceof Answer.Shown shown ? shown.refused(faults) : page;
    }

    private static String after(String path, long entry) {
        int anchor = path.indexOf('#');
        String page = anchor < 0 ? path : path.substring(0, anchor);
        return page + (page.contains("?") ? "&" : "?") + Told.FIELD + "=" + entry
                + (anchor < 0 ? "" : path.substring(anchor));
    }
}

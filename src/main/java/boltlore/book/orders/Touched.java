package boltlore.book.orders;

import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Book;
import boltlore.book.db.Contents;
import boltlore.book.db.Reading;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.trades.KitInWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * An order of the book that holds something which an edit of the catalogue touches.
 *
 * @param what in sentences, by part, by choice, or that it makes no kit any more
 */
public record Touched(OrderStanding order, List<String> what) {

    private static final int MOST = 1_000_000;
    private static final List<OrderState> LOOKED_AT = Arrays.stream(OrderState.values())
            .filter(state -> state.open() || state.frozen())
            .toList();

    /** All of them: drafts, quoted, open and shipped, each against the catalogue that its kit was resolved with. */
    public static Outcome<List<Touched>> by(Book book, Bench edited, LocalDate today) {
        return KeptCatalogue.of(edited.folder(), edited.catalogue())
                .then(files -> Outcome.sound(book.read(reading -> new Search(reading, edited, files, today).all())));
    }

    public JsonOut.Members json() {
        return OrderJson.standing(order).put("what", JsonOut.texts(what));
    }

    /** One look at the book. */
    private static final class Search {

        private final Reading reading;
        private final Bench edited;
        private final KeptCatalogue now;
        private final LocalDate today;
        private final Map<String, CatalogueEdit> edits = new HashMap<>();
        private final Map<String, SortedMap<String, String>> touchedOfKit = new HashMap<>();
        private final String newest;

        Search(Reading reading, Bench edited, KeptCatalogue now, LocalDate today) {
            this.reading = reading;
            this.edited = edited;
            this.now = now;
            this.today = today;
            this.newest = reading.orders().newestCatalogue().orElse("");
        }

        List<Touched> all() {
            return reading.orders().in(LOOKED_AT, MOST).stream()
                    .map(order -> new Touched(order, what(order)))
                    .filter(touched -> !touched.what().isEmpty())
                    .sorted(Comparator.comparing(
                                    (Touched touched) -> touched.order().state())
                            .thenComparing(touched -> touched.order().name()))
                    .toList();
        }

        private List<String> what(OrderStanding order) {
            String base = order.catalogue().isEmpty() ? newest : order.catalogue();
            CatalogueEdit edit = base.isEmpty() ? CatalogueEdit.NONE : edits.computeIfAbsent(base, this::edit);
            List<String> what = new ArrayList<>();
            if (order.catalogue().isEmpty()) {
                what.addAll(ofDraft(order, edit));
            } else {
                what.addAll(touchedOfKit
                        .computeIfAbsent(order.kit() + " " + base, key -> ofKit(order.kit(), edit))
                        .values());
            }
            reading.orders().choices(order.name()).forEach((option, value) -> {
                String says = edit.choices().get(new CatalogueEdit.Chosen(order.family(), option, value));
                if (says != null) {
                    what.add(option + "=" + value + ": " + says);
                }
            });
            return what;
        }

        private CatalogueEdit edit(String base) {
            Contents contents = reading.contents();
            SortedMap<String, byte[]> before = new TreeMap<>();
            SortedMap<String, byte[]> after = new TreeMap<>(now.files());
            KeptCatalogue.list(contents, base).forEach((path, hash) -> {
                byte[] file = contents.of(hash);
                if (Arrays.equals(file, after.get(path))) {
                    after.remove(path);
                } else {
                    before.put(path, file);
                }
            });
            return CatalogueEdit.of(before, after);
        }

        private SortedMap<String, String> ofKit(String kit, CatalogueEdit edit) {
            return edit.parts().isEmpty()
                    ? new TreeMap<>()
                    : of(reading.orders().lines(kit), edit);
        }

        private static SortedMap<String, String> of(List<KitLine> lines, CatalogueEdit edit) {
            SortedMap<String, String> touched = new TreeMap<>();
            new TreeSet<>(lines.stream().map(KitLine::part).toList()).forEach(part -> {
                String says = edit.parts().get(part);
                if (says != null) {
                    touched.put(part, part + ": " + says);
                }
            });
            return touched;
        }

        /** Of a draft that was never quoted, its kit is resolved with the edited catalogue. */
        private List<String> ofDraft(OrderStanding order, CatalogueEdit edit) {
            if (edit.parts().isEmpty() && edit.choices().isEmpty()) {
                return List.of();
            }
            Outcome<KitInWork> resolved = edited.order(
                            order.name(), reading.contents().of(order.draft()))
                    .then(read -> read.choices().unsettled().isEmpty()
                            ? edited.kit(read, today)
                            : Outcome.<KitInWork>faulty(PARTIAL));
            if (resolved instanceof Outcome.Sound<KitInWork> sound) {
                byte[] lines = Kitted.lines(sound.value().bill());
                return List.copyOf(of(KitLines.read(order.name(), lines), edit).values());
            }
            return resolved.faults().equals(List.of(PARTIAL))
                    ? List.of()
                    : resolved.faults().stream()
                            .map(fault -> "makes no kit with this catalogue: " + fault.found())
                            .toList();
        }

        private static final Fault PARTIAL = Fault.of("", "choices that are not all made", "", "");
    }
}

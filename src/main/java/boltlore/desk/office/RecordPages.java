package boltlore.desk.office;

import boltlore.book.Entry;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.Person;
import boltlore.book.Subject;
import boltlore.book.db.Reading;
import boltlore.book.db.Written;
import boltlore.book.orders.PersonDesk;
import boltlore.desk.frame.Acting;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Names;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Told;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Who did what, and what the book holds of persons: to look at, to hand out and to erase. */
public final class RecordPages {

    private static final int MOST = 60;
    private static final String PERSON = "/office/person/";
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final Workshop workshop;

    RecordPages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look("/office/journal", this::journal);
        doors.look("/office/persons", this::persons);
        doors.look(PERSON + "{key}", this::person);
        doors.act(PERSON + "{key}/export", this::handOut);
        doors.look(PERSON + "{key}/erase", this::erasing);
        doors.act(PERSON + "{key}/erase", this::erase);
    }

    private Answer journal(Call call) {
        String order = call.said("order");
        String path = "/office/journal?order=" + URLEncoder.encode(order, StandardCharsets.UTF_8);
        return workshop.book().read(reading -> {
            Stretch<Entry> entries = order.isEmpty()
                    ? newest(reading, call, path)
                    : Stretch.of(ofOrder(reading, order), call, MOST, path);
            return Answer.page(
                    order.isEmpty() ? "Journal" : "Journal of " + order,
                    "office/journal.jte",
                    new JournalPage(order, entries.map(entry -> line(reading, entry))));
        });
    }

    private static List<Entry> ofOrder(Reading reading, String order) {
        List<Entry> all = new ArrayList<>(reading.journal().of(new Subject(OrderHappening.WHAT, order)));
        Collections.reverse(all);
        return all;
    }

    /** Entries are numbered one by one: those that are shown are found by their numbers. */
    private static Stretch<Entry> newest(Reading reading, Call call, String path) {
        int all = Math.toIntExact(reading.journal().last().map(Entry::number).orElse(0L));
        String said = call.said(Stretch.FROM);
        int first = said.matches("[0-9]{1,7}") ? Math.max(0, Math.min(Integer.parseInt(said), all - 1)) : 0;
        int before = Math.max(0, all - first - MOST);
        List<Entry> entries = new ArrayList<>(reading.journal().after(before, all - first - before));
        Collections.reverse(entries);
        return new Stretch<>(entries, first, all, MOST, path);
    }

    private Line line(Reading reading, Entry entry) {
        return new Line(
                entry.number(),
                MINUTE.format(entry.stamp().at().atZone(ZoneId.systemDefault())),
                reading.persons().shown(entry.stamp().person()),
                entry.stamp().desk(),
                entry.kind(),
                about(reading, entry.subject()),
                entry.subject().what().equals(OrderHappening.WHAT)
                        ? "/sales/order/" + entry.subject().name()
                        : "",
                Told.facts(entry, (name, value) -> named(reading, name, value)),
                entry.reason());
    }

    private static String about(Reading reading, Subject subject) {
        boolean person = subject.what().equals("person");
        return (subject.what() + " " + (person ? reading.persons().shown(subject.name()) : subject.name())).strip();
    }

    private String named(Reading reading, String name, String value) {
        return switch (name) {
            case "family" -> workshop.names().kit(value);
            case "customer" -> reading.persons().shown(value);
            case "finish" -> workshop.names().finish(value);
            case "part" -> workshop.names().part(value);
            default -> value;
        };
    }

    private Answer persons(Call call) {
        String words = call.said("words");
        String said = call.said(Stretch.FROM);
        return workshop.book().read(reading -> {
            int all = reading.persons().count(words);
            int asked = said.matches("[0-9]{1,7}") ? Integer.parseInt(said) : 0;
            int first = Math.max(0, Math.min(asked, all - 1)) / MOST * MOST;
            return Answer.page(
                    "Persons",
                    "office/persons.jte",
                    new PersonsPage(
                            Told.of(reading, call),
                            words,
                            new Stretch<>(
                                    reading.persons().with(words, first, MOST),
                                    first,
                                    all,
                                    MOST,
                                    "/office/persons?words=" + URLEncoder.encode(words, StandardCharsets.UTF_8))));
        });
    }

    private Answer person(Call call) {
        return held(call, "", "office/person.jte", false);
    }

    private Answer erasing(Call call) {
        return held(call, "Erase what is held of ", "office/erase.jte", true);
    }

    /** @param naming whether the journal is looked through for the name, which takes its time */
    private Answer held(Call call, String title, String template, boolean naming) {
        return workshop.book().read(reading -> {
            Outcome<Person> found = PersonDesk.known(reading, call.path("key"));
            if (!(found instanceof Outcome.Sound<Person> sound)) {
                return new Answer.Missing(Sentences.missing(found.faults()));
            }
            Person person = sound.value();
            return Answer.page(
                    title + person.shown(),
                    template,
                    new HeldPage(
                            Told.of(reading, call),
                            workshop.names(),
                            person,
                            reading.orders().ofCustomer(person.key()),
                            reading.journal().countBy(person.key()),
                            naming
                                    ? PersonDesk.naming(reading, person).stream()
                                            .map(entry -> line(reading, entry))
                                            .toList()
                                    : List.of()));
        });
    }

    /** What is handed out is written down, so that it is a form that asks for it. */
    private Answer handOut(Call call) {
        Outcome<Written<String>> out = new PersonDesk(workshop.book(), call.by()).handOut(call.path("key"));
        return out instanceof Outcome.Sound<Written<String>> sound
                ? new Answer.Handed(SheetFile.utf8(
                        "held-of-" + call.path("key") + ".json", sound.value().value()))
                : new Answer.Missing(Sentences.missing(out.faults()));
    }

    private Answer erase(Call call) {
        Typed typed = new Typed(call);
        String why = typed.reason("reason", "Why");
        return Acting.done(
                call,
                "/office/persons",
                by -> typed.sound().then(ok -> new PersonDesk(workshop.book(), by).erase(call.path("key"), why)),
                this::erasing);
    }

    /** The journal, the newest entry first; of one order where that is asked for. */
    public record JournalPage(String order, Stretch<Line> lines) {}

    /** An entry. */
    public record Line(
            long number,
            String at,
            String who,
            String desk,
            String kind,
            String about,
            String path,
            String says,
            String reason) {}

    /** Those of whom the book holds something. */
    public record PersonsPage(List<String> told, String words, Stretch<Person> persons) {}

    /**
     * What is held of one person.
     *
     * @param orders that are for that person
     * @param entries how many that person has made
     * @param naming entries in whose words the name stands, where that is asked for
     */
    public record HeldPage(
            List<String> told,
            Names names,
            Person person,
            List<OrderStanding> orders,
            long entries,
            List<Line> naming) {

        /** 'Place 1 tax number' of the key place-1-tax-number. */
        public String label(String key) {
            String words = key.replace('-', ' ');
            return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        }
    }
}

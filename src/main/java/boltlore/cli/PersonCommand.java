package boltlore.cli;

import boltlore.book.Entry;
import boltlore.book.Person;
import boltlore.book.db.Place;
import boltlore.book.db.Transfer;
import boltlore.book.orders.OrderJson;
import boltlore.book.orders.PersonDesk;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The data of persons. */
@Command(
        name = "person",
        description =
                "List, add, correct, hand out and erase what the book holds of persons; 'person --help' lists how.",
        subcommands = {
            PersonCommand.Listed.class,
            PersonCommand.Add.class,
            PersonCommand.Change.class,
            PersonCommand.HandOut.class,
            PersonCommand.Erase.class
        })
final class PersonCommand extends BookGroup {

    /** The key of one person. */
    static final class Keyed {
        @Parameters(paramLabel = "KEY", description = "The person's key, as P-7.")
        private String key = "";

        Outcome<String> read() {
            return Said.text("KEY", key, TextShape.ORDER_NAME);
        }
    }

    static void print(Screen screen, Person person) {
        String details = person.details().entrySet().stream()
                .map(detail -> ", " + detail.getKey() + ": " + detail.getValue())
                .collect(Collectors.joining());
        screen.wrapped(0, person.key() + ", " + person.role() + ": " + person.shown() + details);
    }

    /** Lists them. */
    @Command(name = "list", description = "List persons with all that is held of them beside their orders.")
    static final class Listed extends BookCommand {

        @Mixin
        private Listing listing = new Listing();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> listing.of(
                                    book.<List<Person>>read(
                                            reading -> reading.persons().all()),
                                    Transfer::person)
                            .then(persons -> {
                                answer(
                                        screen,
                                        persons,
                                        all -> JsonOut.list(all, Transfer::person),
                                        all -> all.forEach(person -> print(screen, person)));
                                return Outcome.sound(Exit.OK);
                            }));
        }
    }

    /** Takes somebody down. */
    @Command(name = "add", description = "Take somebody of the staff down, who may sign from then on.")
    static final class Add extends BookCommand {

        @Parameters(paramLabel = "NAME", description = "The name.")
        private String name = "";

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return Said.text("NAME", name, TextShape.LINE)
                    .then(known -> reason.read()
                            .then(why -> by().then(by -> inBook(
                                    place,
                                    book -> new PersonDesk(book, by)
                                            .add(known, why)
                                            .then(written -> written(
                                                    screen,
                                                    written,
                                                    Transfer::person,
                                                    person -> print(screen, person)))))));
        }
    }

    /** Corrects them. */
    @Command(name = "change", description = "Correct a person's name, or put details such as an address there.")
    static final class Change extends BookCommand {

        @Mixin
        private Keyed person = new Keyed();

        @Option(names = "--name", paramLabel = "NAME", description = "The name as it should be.")
        private @Nullable String name;

        @Option(
                names = "--detail",
                paramLabel = "WHAT=TEXT",
                description = "As telephone=…; an empty text takes it away. May be given several times.")
        private List<String> details = new ArrayList<>();

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return person.read()
                    .then(key -> named().then(asked -> details()
                            .then(some -> reason.read()
                                    .then(why -> by().then(by -> inBook(
                                            place,
                                            book -> new PersonDesk(book, by)
                                                    .change(key, asked.isEmpty() ? null : asked, some, why)
                                                    .then(written -> written(
                                                            screen,
                                                            written,
                                                            Transfer::person,
                                                            each -> print(screen, each)))))))));
        }

        private Outcome<String> named() {
            return name == null ? Outcome.sound("") : Said.text("--name", name, TextShape.LINE);
        }

        private Outcome<SortedMap<String, String>> details() {
            SortedMap<String, String> sound = new TreeMap<>();
            List<Fault> faults = new ArrayList<>();
            details.forEach(detail -> {
                String[] named = detail.split("=", 2);
                Outcome<String> key = Said.text("--detail", named[0], TextShape.NAME);
                Outcome<String> value = Said.sentence("--detail", named.length < 2 ? "" : named[1]);
                faults.addAll(key.faults());
                faults.addAll(value.faults());
                if (key.faults().isEmpty() && value instanceof Outcome.Sound<String> says) {
                    sound.put(named[0], says.value());
                }
            });
            return faults.isEmpty() ? Outcome.sound(sound) : Outcome.faulty(faults);
        }
    }

    /** Hands them out. */
    @Command(
            name = "export",
            description = "Write all that the book holds of a person into a new file, to hand it out.")
    static final class HandOut extends BookCommand {

        @Mixin
        private Keyed person = new Keyed();

        @Parameters(index = "1", paramLabel = "FILE", description = "The file, which must not be there yet.")
        private Path file = Path.of("");

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return person.read()
                    .then(key -> by().then(by -> inBook(
                            place,
                            book -> new PersonDesk(book, by)
                                    .handOut(key)
                                    .then(written -> Exports.newFile(
                                            file, written.value().getBytes(StandardCharsets.UTF_8)))
                                    .then(path -> {
                                        screen.wrapped(0, "Written: " + path);
                                        return Outcome.sound(Exit.OK);
                                    }))));
        }
    }

    /** Erases them. */
    @Command(
            name = "erase",
            description = "Erase name and details of a person; orders and entries keep the key, and stay as they are.")
    static final class Erase extends BookCommand {

        @Mixin
        private Keyed person = new Keyed();

        @Mixin
        private OrderCommand.Reason reason = new OrderCommand.Reason();

        @Mixin
        private Sure sure = new Sure();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return person.read()
                    .then(key -> sure.of(screen, "All that the book holds of " + key + " is erased")
                            .then(asked -> reason.read())
                            .then(why -> by().then(by -> inBook(
                                    place,
                                    book -> new PersonDesk(book, by)
                                            .erase(key, why)
                                            .then(written -> written(screen, written, Erase::json, each -> {
                                                print(screen, each.person());
                                                named(screen, each.naming());
                                                screen.wrapped(
                                                        0,
                                                        "Sheets that were written, exports and backups of the book hold the name still:"
                                                                + " delete or shred those too. Chassis numbers of orders are kept"
                                                                + " for recalls.");
                                            }))))));
        }

        private static JsonOut json(PersonDesk.Erased erased) {
            return Transfer.person(erased.person()).put("named", JsonOut.list(erased.naming(), OrderJson::entry));
        }

        /** What somebody has typed into a reason or a note, nobody can take out of the journal again. */
        private static void named(Screen screen, List<Entry> naming) {
            if (!naming.isEmpty()) {
                screen.wrapped(
                        0,
                        "In " + (naming.size() == 1 ? "1 entry" : naming.size() + " entries")
                                + " somebody has typed the name, or a part of it; entries stay as they are:");
                naming.forEach(each -> screen.wrapped(
                        2,
                        "entry " + each.number() + " of "
                                + Entry.written(each.stamp().at()).substring(0, 10) + ", " + each.kind() + ", "
                                + each.subject().what() + " " + each.subject().name()));
            }
        }
    }
}

package boltlore.cli;

import boltlore.book.db.DeskUsers.User;
import boltlore.book.db.Place;
import boltlore.desk.frame.Role;
import boltlore.desk.people.People;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Who may sign in at desks that other machines reach. */
final class DeskAdmits {

    private DeskAdmits() {}

    /** Lets somebody in. */
    @Command(
            name = "admit",
            description = "Let somebody sign in at a desk that other machines reach. The password is asked for, or read"
                    + " from the first line of the input; the same name again gets another one.")
    static final class Admit extends BookCommand {

        @Parameters(paramLabel = "NAME", description = "The person's name, as it stands in the journal.")
        private String name = "";

        @Option(
                names = "--role",
                paramLabel = "ROLE",
                required = true,
                split = ",",
                description =
                        "What the person works as: sales, stores, fabrication, bench, engineer, owner; an owner may"
                                + " enter every room.")
        private List<String> roles = new ArrayList<>();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return Said.text("NAME", name, TextShape.LINE)
                    .then(who -> roles().then(works -> password()
                            .then(password ->
                                    inBookOrNew(place, book -> new People(book).admit(who, works, password)))))
                    .then(who -> {
                        screen.line(who + " may sign in.");
                        return Outcome.sound(Exit.OK);
                    });
        }

        private Outcome<Set<Role>> roles() {
            Set<Role> read = EnumSet.noneOf(Role.class);
            List<Fault> faults = new ArrayList<>();
            roles.forEach(written -> Role.read(written)
                    .ifPresentOrElse(
                            read::add,
                            () -> faults.add(Fault.of("--role", "'" + written + "'", "one of " + Role.names(), ""))));
            return faults.isEmpty() ? Outcome.sound(read) : Outcome.faulty(faults);
        }

        /** Never on the command line, where others on the machine could read it. */
        @SuppressWarnings("SystemConsoleNull") // a later Java reads the input by its console, to the same end
        private static Outcome<String> password() {
            Console console = System.console();
            try {
                String typed = console != null
                        ? String.valueOf(console.readPassword("Password: "))
                        : new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
                return typed == null
                        ? Outcome.faulty(Fault.of("password", "nothing", "a password", ""))
                        : Outcome.sound(typed);
            } catch (IOException e) {
                return Outcome.faulty(Fault.of("password", "an input that cannot be read", "a password", ""));
            }
        }
    }

    /** Lets somebody in no more. */
    @Command(name = "dismiss", description = "Let somebody sign in no more.")
    static final class Dismiss extends BookCommand {

        @Parameters(paramLabel = "NAME", description = "The person's name.")
        private String name = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(place, book -> Outcome.sound(book.dismiss(name))).then(was -> {
                if (!was) {
                    return Outcome.faulty(Fault.of("NAME", "'" + name + "'", "somebody who may sign in", ""));
                }
                screen.line(name + " may sign in no more; what they have open ends with their session.");
                return Outcome.sound(Exit.OK);
            });
        }
    }

    /** Lists who may. */
    @Command(name = "people", description = "List who may sign in, and as what.")
    static final class Listed extends BookCommand {

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(place, book -> {
                List<User> all = new People(book).all();
                answer(
                        screen,
                        all,
                        users -> JsonOut.list(
                                users,
                                user -> JsonOut.object()
                                        .put("name", user.name())
                                        .put("roles", JsonOut.texts(user.roles()))),
                        users -> users.forEach(
                                user -> screen.wrapped(0, user.name() + ": " + String.join(", ", user.roles()))));
                return Outcome.sound(Exit.OK);
            });
        }
    }
}

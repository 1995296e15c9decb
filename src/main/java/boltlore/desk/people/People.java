package boltlore.desk.people;

import boltlore.book.db.Book;
import boltlore.book.db.DeskUsers.User;
import boltlore.desk.frame.Access;
import boltlore.desk.frame.Role;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Those who may sign in at desks of a book. */
public final class People implements Access.SignsIn {

    /** OWASP Password Storage Cheat Sheet, Argon2id: 19 MiB, two passes, one lane (from memory). */
    private static final Argon2Function HASHING = Argon2Function.getInstance(19 * 1024, 2, 1, 32, Argon2.ID);

    /** NIST SP 800-63B asks for 15 where a password stands alone (from memory); long enough is what counts. */
    public static final int SHORTEST = 15;

    private static final int LONGEST = 200;

    /** Checked where nobody has the name, so that the answer takes as long. */
    private final String nobody = hash("nobody's password");

    private final Book book;

    public People(Book book) {
        this.book = book;
    }

    private static String hash(String password) {
        return Password.hash(password).addRandomSalt(16).with(HASHING).getResult();
    }

    /** Lets somebody sign in; the same name again gets another password and other roles. */
    public Outcome<String> admit(String name, Set<Role> roles, String password) {
        if (password.length() < SHORTEST || password.length() > LONGEST) {
            return Outcome.faulty(Fault.of(
                    "password",
                    password.length() + " characters",
                    "from " + SHORTEST + " to " + LONGEST,
                    "Some words that belong to nobody make one that is easily kept in mind."));
        }
        if (roles.isEmpty() || roles.contains(Role.ANY)) {
            return Outcome.faulty(Fault.of("roles", "none", "at least one of " + Role.names(), ""));
        }
        List<String> written = roles.stream().map(Role::written).toList();
        book.admit(new User(name, written, hash(password)));
        return Outcome.sound(name);
    }

    @Override
    public Optional<Set<Role>> now(String name) {
        return book.read(reading -> reading.deskUsers().find(name)).map(People::roles);
    }

    @Override
    public Optional<Set<Role>> roles(String name, String password) {
        Optional<User> found = book.read(reading -> reading.deskUsers().find(name));
        String hash = found.map(User::password).orElse(nobody);
        boolean right =
                password.length() <= LONGEST && Password.check(password, hash).with(HASHING);
        return right && found.isPresent() ? Optional.of(roles(found.get())) : Optional.empty();
    }

    private static Set<Role> roles(User user) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        user.roles().forEach(written -> Role.read(written).ifPresent(roles::add));
        return roles;
    }

    public List<User> all() {
        return book.read(reading -> reading.deskUsers().all());
    }
}

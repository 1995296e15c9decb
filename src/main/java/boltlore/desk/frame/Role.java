package boltlore.desk.frame;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What somebody works as. */
public enum Role {
    SALES,
    STORES,
    FABRICATION,
    BENCH,
    ENGINEER,
    /** May enter every room. */
    OWNER,
    /** Of a room: whoever works here at all. */
    ANY;

    /** As it is typed and kept. */
    public String written() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Empty where nobody can work as that. */
    public static Optional<Role> read(String written) {
        return people().filter(role -> role.written().equals(written)).findFirst();
    }

    /** All that somebody can work as, for a sentence. */
    public static String names() {
        return people().map(Role::written).collect(Collectors.joining(", "));
    }

    private static Stream<Role> people() {
        return Stream.of(values()).filter(role -> role != ANY);
    }

    /** Whether a room of this role is open to somebody who works as these. */
    boolean admits(Set<Role> roles) {
        return this == ANY || roles.contains(this) || roles.contains(OWNER);
    }
}

package boltlore.book.db;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Who may sign in at a desk of this book. */
public final class DeskUsers {

    private final Handle handle;

    DeskUsers(Handle handle) {
        this.handle = handle;
    }

    /**
     * One who may.
     *
     * @param roles what the person works as, by their written names
     * @param password its hash, with all that is needed to check it
     */
    public record User(String name, List<String> roles, String password) {

        public User {
            roles = List.copyOf(roles);
        }

        /** A hash is nobody's to read. */
        @Override
        public String toString() {
            return name + " " + roles;
        }
    }

    public List<User> all() {
        return handle.createQuery("select name, roles, password from desk_user order by name")
                .map((row, context) -> new User(
                        row.getString("name"), List.of(row.getString("roles").split(",")), row.getString("password")))
                .list();
    }

    public Optional<User> find(String name) {
        return all().stream().filter(user -> user.name().equals(name)).findFirst();
    }

    /** Puts a user in the place of the one of that name. */
    void put(User user) {
        handle.execute("delete from desk_user where name = ?", user.name());
        handle.execute(
                "insert into desk_user (name, roles, password) values (?, ?, ?)",
                user.name(),
                String.join(",", user.roles()),
                user.password());
    }

    boolean remove(String name) {
        return handle.execute("delete from desk_user where name = ?", name) > 0;
    }
}

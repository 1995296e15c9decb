package boltlore.desk.frame;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * From where a desk is reached, and by whom.
 *
 * @param address that it listens on
 * @param port 0 takes one that is free
 * @param outside null where only this machine reaches it, and everybody at it may do everything
 */
public record Access(String address, int port, @Nullable Outside outside) {

    static final String LOOP_BACK = "127.0.0.1";

    /**
     * What it takes to be reached from other machines.
     *
     * @param names that its certificate holds
     * @param certificate PEM file (RFC 7468), with those that lead to a known authority behind it
     * @param key PEM file of its private key, PKCS #8 (RFC 5958), without a password
     * @param people who may sign in
     */
    public record Outside(Set<String> names, Path certificate, Path key, SignsIn people) {}

    /** Who may sign in, asked anew each time. */
    public interface SignsIn {

        /** What somebody of that name and password works as; empty where the password is not right. */
        Optional<Set<Role>> roles(String name, String password);

        /** What somebody of that name works as now; empty where nobody of that name may sign in any more. */
        Optional<Set<Role>> now(String name);
    }

    /** This machine alone. */
    public static Access here(int port) {
        return new Access(LOOP_BACK, port, null);
    }
}

package boltlore.desk.frame;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Who has signed in. A session ends when nobody used it for a while, and at the end of a shift; wrong passwords make the
 * next try wait, for a name longer and longer.
 */
final class Sessions {

    private static final Duration IDLE = Duration.ofMinutes(45);
    private static final Duration SHIFT = Duration.ofHours(12);
    private static final int FREE_TRIES = 5;
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
    private static final int MOST_NAMES = 10_000;

    private final Access.SignsIn people;
    private final Supplier<Instant> clock;
    private final Map<String, Session> sessions = new HashMap<>();
    private final Map<String, Tries> tries = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Tries> eldest) {
            return size() > MOST_NAMES;
        }
    };

    Sessions(Access.SignsIn people, Supplier<Instant> clock) {
        this.people = people;
        this.clock = clock;
    }

    /** Somebody who has signed in. */
    record Signed(String name, Set<Role> roles) {}

    private record Session(Signed signed, Instant began, Instant used) {}

    private record Tries(int wrong, Instant next) {}

    /** Who has this session, as which they work now; empty where it has ended, or where they may sign in no more. */
    Optional<Signed> who(String key) {
        Optional<Signed> signed = known(key);
        Optional<Set<Role>> now = signed.flatMap(who -> people.now(who.name()));
        if (now.isEmpty()) {
            end(key);
        }
        return signed.flatMap(who -> now.map(roles -> new Signed(who.name(), roles)));
    }

    private synchronized Optional<Signed> known(String key) {
        Session session = sessions.get(key);
        Instant now = clock.get();
        if (session == null
                || now.isAfter(session.used().plus(IDLE))
                || now.isAfter(session.began().plus(SHIFT))) {
            sessions.remove(key);
            return Optional.empty();
        }
        sessions.put(key, new Session(session.signed(), session.began(), now));
        return Optional.of(session.signed());
    }

    /**
     * A key for a new session; empty where the password is not right.
     *
     * @throws Guard.Refused where so many were wrong that the next must wait
     */
    Optional<String> signIn(String name, String password) {
        Instant now = clock.get();
        if (now.isBefore(next(name))) {
            throw new Guard.Refused(429, "Too many wrong passwords for this name. Try again in a while.");
        }
        Optional<Set<Role>> found = people.roles(name, password);
        return found.isEmpty() ? wrong(name, now) : Optional.of(begin(new Signed(name, found.get()), now));
    }

    private synchronized Instant next(String name) {
        Tries known = tries.get(name);
        return known == null ? Instant.EPOCH : known.next();
    }

    private synchronized Optional<String> wrong(String name, Instant now) {
        Tries before = tries.getOrDefault(name, new Tries(0, now));
        int wrong = before.wrong() + 1;
        long wait = wrong < FREE_TRIES ? 0 : Math.min(LONGEST_WAIT.toSeconds(), 1L << Math.min(20, wrong - FREE_TRIES));
        tries.put(name, new Tries(wrong, now.plusSeconds(wait)));
        return Optional.empty();
    }

    private synchronized String begin(Signed signed, Instant now) {
        tries.remove(signed.name());
        sessions.values().removeIf(session -> now.isAfter(session.used().plus(IDLE)));
        String key = Guard.random();
        sessions.put(key, new Session(signed, now, now));
        return key;
    }

    synchronized void end(String key) {
        sessions.remove(key);
    }
}

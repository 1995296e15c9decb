package boltlore.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A session at the desk")
class SessionsTest {

    private final AtomicReference<Instant> clock = new AtomicReference<>(Instant.parse("2026-11-30T08:00:00Z"));
    private final AtomicReference<Optional<Set<Role>>> now = new AtomicReference<>(Optional.of(Set.of(Role.STORES)));
    private final Sessions sessions = new Sessions(
            new Access.SignsIn() {
                @Override
                public Optional<Set<Role>> roles(String name, String password) {
                    return password.equals("right") ? now.get() : Optional.empty();
                }

                @Override
                public Optional<Set<Role>> now(String name) {
                    return now.get();
                }
            },
            clock::get);

    private void wait(Duration time) {
        clock.updateAndGet(now -> now.plus(time));
    }

    private String begin() {
        return sessions.signIn("Pat", "right").orElseThrow();
    }

    @Test
    void is_of_who_began_it_and_of_nobody_else() {
        assertThat(sessions.who(begin())).hasValue(new Sessions.Signed("Pat", Set.of(Role.STORES)));
        assertThat(sessions.who("guessed")).isEmpty();
        assertThat(sessions.signIn("Pat", "wrong")).isEmpty();
    }

    @Test
    void ends_at_once_when_who_began_it_may_sign_in_no_more() {
        String key = begin();
        now.set(Optional.empty());
        assertThat(sessions.who(key)).isEmpty();
        now.set(Optional.of(Set.of(Role.STORES)));
        assertThat(sessions.who(key)).isEmpty();
    }

    @Test
    void goes_on_as_what_its_person_works_as_now() {
        String key = begin();
        now.set(Optional.of(Set.of(Role.BENCH)));
        assertThat(sessions.who(key)).hasValue(new Sessions.Signed("Pat", Set.of(Role.BENCH)));
    }

    @Test
    void has_another_key_each_time() {
        assertThat(begin()).isNotEqualTo(begin());
    }

    @Test
    void ends_when_nobody_has_used_it_for_45_minutes_but_goes_on_while_it_is_used() {
        String key = begin();
        wait(Duration.ofMinutes(44));
        assertThat(sessions.who(key)).isPresent();
        wait(Duration.ofMinutes(44));
        assertThat(sessions.who(key)).isPresent();
        wait(Duration.ofMinutes(46));
        assertThat(sessions.who(key)).isEmpty();
    }

    @Test
    void ends_after_a_shift_of_12_hours_however_much_it_is_used() {
        String key = begin();
        for (int i = 0; i < 24; i++) {
            assertThat(sessions.who(key)).isPresent();
            wait(Duration.ofMinutes(30));
        }
        wait(Duration.ofMinutes(1));
        assertThat(sessions.who(key)).isEmpty();
    }

    @Test
    void ends_when_it_is_ended() {
        String key = begin();
        sessions.end(key);
        assertThat(sessions.who(key)).isEmpty();
    }

    @Test
    void is_refused_for_longer_and_longer_after_five_wrong_passwords_even_with_the_right_one() {
        for (int i = 0; i < 5; i++) {
            assertThat(sessions.signIn("Pat", "wrong")).isEmpty();
        }
        assertThatThrownBy(() -> sessions.signIn("Pat", "right")).isInstanceOf(Guard.Refused.class);
        wait(Duration.ofSeconds(2));
        assertThat(sessions.signIn("Pat", "wrong")).isEmpty();
        wait(Duration.ofMillis(1500));
        assertThatThrownBy(() -> sessions.signIn("Pat", "right")).isInstanceOf(Guard.Refused.class);
        wait(Duration.ofSeconds(1));
        assertThat(sessions.signIn("Pat", "right")).isPresent();
    }

    @Test
    void of_others_is_not_held_up_by_that() {
        for (int i = 0; i < 9; i++) {
            try {
                assertThat(sessions.signIn("Pat", "wrong")).isEmpty();
            } catch (Guard.Refused waiting) {
                assertThat(waiting.status()).isEqualTo(429);
            }
        }
        assertThat(sessions.signIn("Kim", "right")).isPresent();
    }
}

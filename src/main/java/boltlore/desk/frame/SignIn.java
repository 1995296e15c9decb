package boltlore.desk.frame;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Lets people in by name and password where a desk is reached from other machines; else whoever is at this one. */
public final class SignIn {

    static final String PATH = "/sign-in";

    private static final String COOKIE = "__Host-boltlore-session";
    private static final String SIGNED = "signed";

    private final @Nullable Sessions sessions;

    /** @param people null where everybody here may do everything */
    SignIn(Access.@Nullable SignsIn people, Supplier<Instant> clock) {
        this.sessions = people == null ? null : new Sessions(people, clock);
    }

    /** What a page to sign in on shows. */
    public record Page(String to) {}

    /** Sends whoever has not signed in to do so first; the guard has looked at the request before. */
    void look(Context context) {
        Sessions all = sessions;
        if (all == null
                || context.path().startsWith("/assets/")
                || context.path().equals(PATH)) {
            return;
        }
        Optional<Sessions.Signed> who = all.who(key(context));
        if (who.isPresent()) {
            context.attribute(SIGNED, who.get());
        } else if (context.method().equals(HandlerType.GET)) {
            context.redirect(
                    PATH + "?to=" + URLEncoder.encode(context.path(), StandardCharsets.UTF_8), HttpStatus.SEE_OTHER);
            context.skipRemainingHandlers();
        } else {
            throw new Guard.Refused(403, "Your session has ended; sign in and send it again. Nothing was changed.");
        }
    }

    /** Who asks; empty where nobody has to sign in. */
    Optional<Sessions.Signed> who(Context context) {
        return Optional.ofNullable(context.attribute(SIGNED));
    }

    /** What may be done here. */
    Set<Role> roles(Context context) {
        return sessions == null
                ? EnumSet.allOf(Role.class)
                : who(context).map(Sessions.Signed::roles).orElse(Set.of());
    }

    /** How a page is written in answer to a request. */
    interface Showing {
        void show(Context context, Answer.Shown shown);
    }

    void open(JavalinConfig config, Showing showing) {
        Sessions all = sessions;
        if (all == null) {
            return;
        }
        config.routes.get(PATH, context -> showing.show(context, page(context.queryParam("to"))));
        config.routes.post(PATH, context -> {
            Optional<String> key = all.signIn(said(context, "name"), said(context, "password"));
            if (key.isPresent()) {
                context.cookie(new Cookie(COOKIE, key.get(), "/", -1, true, true, null, SameSite.STRICT));
                context.redirect(here(context.formParam("to")), HttpStatus.SEE_OTHER);
            } else {
                showing.show(
                        context,
                        page(context.formParam("to")).refusing(List.of("Name and password do not go together.")));
            }
        });
        config.routes.post("/sign-out", context -> {
            all.end(key(context));
            context.redirect(PATH, HttpStatus.SEE_OTHER);
        });
    }

    private static Answer.Shown page(@Nullable String to) {
        return Answer.page("Sign in", "frame/sign-in.jte", new Page(here(to)));
    }

    private static String said(Context context, String field) {
        String said = context.formParam(field);
        return said == null ? "" : said;
    }

    /** Only ever a page of this desk: '//elsewhere' and '/\elsewhere' are other hosts to a browser. */
    private static String here(@Nullable String to) {
        return to != null && to.matches("/[A-Za-z0-9][A-Za-z0-9/_.-]*") ? to : "/";
    }

    private static String key(Context context) {
        String key = context.cookie(COOKIE);
        return key == null ? "" : key;
    }
}

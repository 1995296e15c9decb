package boltlore.desk.frame;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Keeps other sites out. A page of another site may send a browser here, but it knows neither the browser's cookie nor the
 * token that is made of it, and its name stands in what it sends (OWASP Cross-Site Request Forgery Prevention Cheat Sheet:
 * signed double submit, with a check of the origin). A name that leads here by way of another name server is refused too.
 */
final class Guard {

    static final String TOKEN = "token";
    static final String ONCE = "once";

    /** Said by a form that answers one question: whoever goes back may answer it otherwise. */
    static final String ANEW = "anew";

    private static final String COOKIE = "boltlore-desk";
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";
    private static final Set<HandlerType> ALLOWED = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.POST);
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int KEY_BYTES = 32;

    private final boolean secure;

    /** @param secure whether the desk speaks TLS */
    Guard(boolean secure) {
        this.secure = secure;
    }

    /** A request that is not answered, and why. */
    static final class Refused extends RuntimeException {

        private final int status;
        private final String says;

        Refused(int status, String says) {
            super(says);
            this.status = status;
            this.says = says;
        }

        String says() {
            return says;
        }

        int status() {
            return status;
        }
    }

    /** Looks at a request before any room sees it. */
    void look(Context context, Set<String> hosts) {
        headers(context);
        String host = Optional.ofNullable(context.header("Host")).orElse("");
        if (!hosts.contains(host)) {
            throw new Refused(421, "This desk does not answer to the name that was asked for.");
        }
        if (!ALLOWED.contains(context.method())) {
            throw new Refused(405, "A page can be looked at, and a form can be sent; nothing else.");
        }
        String key = key(context);
        if (context.method().equals(HandlerType.POST)) {
            fromHere(context, host);
            if (!same(token(key), Optional.ofNullable(context.formParam(TOKEN)).orElse(""))) {
                throw new Refused(
                        403,
                        "The form did not come from a page of this desk that is open in this browser."
                                + " Open the page anew and fill it in again; nothing was changed.");
            }
        }
        context.attribute(TOKEN, token(key));
    }

    private void headers(Context context) {
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("X-Frame-Options", "DENY");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        context.header("Cross-Origin-Resource-Policy", "same-origin");
        context.header("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        context.header("Cache-Control", "no-store");
        if (secure) {
            context.header("Strict-Transport-Security", "max-age=31536000");
        }
    }

    private void fromHere(Context context, String host) {
        String own = (secure ? "https://" : "http://") + host;
        String origin = context.header("Origin");
        String site = context.header("Sec-Fetch-Site");
        boolean here = own.equals(origin) && (site == null || site.equals("same-origin"));
        if (!here) {
            throw new Refused(403, "The form came from another site; nothing was changed.");
        }
    }

    private String key(Context context) {
        String known = context.cookie(name());
        if (known != null && known.length() >= KEY_BYTES) {
            return known;
        }
        String fresh = random();
        context.cookie(new Cookie(name(), fresh, "/", -1, secure, true, null, SameSite.STRICT));
        return fresh;
    }

    /** A browser takes a cookie of this beginning only over TLS and from this very host (RFC 6265bis). */
    private String name() {
        return secure ? "__Host-" + COOKIE : COOKIE;
    }

    static String random() {
        byte[] bytes = new byte[KEY_BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static String token(String key) {
        return hash("form " + key);
    }

    static String hash(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(sum);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    private static boolean same(String expected, String found) {
        return MessageDigest.isEqual(expected.getBytes(StandardCharsets.UTF_8), found.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Names what a form says: the same form with the same answers, sent again, is the same act; with other answers it is
     * another.
     */
    static String once(Context context, Map<String, List<String>> said) {
        return context.method().equals(HandlerType.POST) ? hash(context.path() + " " + new TreeMap<>(said)) : "";
    }

    /** Names the form, whatever it says; one that may be answered anew, as often as one likes, has no name. */
    static String form(Context context, Map<String, List<String>> said) {
        String key = said.getOrDefault(ONCE, List.of("")).get(0);
        return key.isEmpty() || said.containsKey(ANEW) ? "" : "form " + hash(context.path() + " " + key);
    }

    /** The page that the form stood on, which shows what was done the first time; the guard has looked where it came from. */
    static String from(Context context) {
        String page = context.header("Referer");
        String path = page == null ? "" : URI.create(page).getPath();
        return path.startsWith("/") ? path : "/";
    }
}

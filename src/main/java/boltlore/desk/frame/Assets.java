package boltlore.desk.frame;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Style sheet and script, which come with the program. Their address holds a sum of what they say, so a browser keeps them. */
public enum Assets {
    STYLE("desk.css", "/boltlore/desk/frame/desk.css", "text/css; charset=utf-8"),
    ROOMS("rooms.css", "/boltlore/desk/frame/rooms.css", "text/css; charset=utf-8"),
    SHEET("sheet.css", "/boltlore/report/html/sheet.css", "text/css; charset=utf-8"),
    BAR("bar.css", "/boltlore/desk/frame/bar.css", "text/css; charset=utf-8"),
    SCRIPT("htmx.js", "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js", "text/javascript; charset=utf-8");

    private static final int SUM = 10;

    private final String name;
    private final String type;
    private final String text;
    private final String sum;

    Assets(String name, String resource, String type) {
        this.name = name;
        this.type = type;
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is not part of the program");
            }
            this.text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        this.sum = Guard.hash(text).substring(0, SUM);
    }

    public String path() {
        return "/assets/" + sum + "/" + name;
    }

    void hand(Context context) {
        context.header("Cache-Control", "public, max-age=31536000, immutable");
        context.contentType(type);
        context.result(text);
    }

    static Map<String, Assets> byPath() {
        return Stream.of(values()).collect(Collectors.toMap(Assets::path, asset -> asset));
    }
}

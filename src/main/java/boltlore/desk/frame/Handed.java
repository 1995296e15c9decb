package boltlore.desk.frame;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** How a file is handed to a browser. */
final class Handed {

    private static final Map<String, String> TYPES = Map.of(
            "xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            "csv", "text/csv; charset=utf-8",
            "json", "application/json; charset=utf-8",
            "pdf", "application/pdf",
            "svg", "image/svg+xml");

    private Handed() {}

    static String type(String name) {
        return TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream");
    }

    /** To keep, never to show: RFC 6266 with the name as RFC 8187 writes it. */
    static String disposition(String path) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        return "attachment; filename*=UTF-8''"
                + URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }
}

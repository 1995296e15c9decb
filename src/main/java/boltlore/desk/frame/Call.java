package boltlore.desk.frame;

import boltlore.book.By;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What somebody asks of a room, or says to it.
 *
 * @param path what stands in the place of names in the path, by name
 * @param said fields of the form, or of the query where a page is only asked for, by name
 * @param by who asks, from where, and on which day
 */
public record Call(Map<String, String> path, Map<String, List<String>> said, By by) {

    /** What stands at that place of the path. */
    public String path(String name) {
        return path.getOrDefault(name, "");
    }

    /** What was said in a field, without space around it; empty where nothing was. */
    public String said(String name) {
        return all(name).stream().findFirst().orElse("");
    }

    /** All that was said in fields of one name, empty ones too, in the order of the page. */
    public List<String> all(String name) {
        return said.getOrDefault(name, List.of()).stream().map(String::strip).toList();
    }

    public LocalDate today() {
        return by.today();
    }
}

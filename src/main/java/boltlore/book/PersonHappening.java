package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;

/**
 * What happens to the data of a person: that it was taken down, changed, handed out or erased, never the data themselves.
 *
 * @param role 'customer' or 'staff'
 */
public record PersonHappening(String key, What what, String role) implements Happening {

    public enum What {
        ADDED,
        CHANGED,
        EXPORTED,
        ERASED
    }

    /** With what all kinds of these entries begin. */
    public static final String KIND = "person ";

    @Override
    public String kind() {
        return KIND + what.name().toLowerCase(java.util.Locale.ROOT);
    }

    @Override
    public Subject subject() {
        return new Subject("person", key);
    }

    @Override
    public JsonOut.Members data() {
        return JsonOut.object().put("role", role);
    }

    static PersonHappening read(String key, What what, ObjectReader reader) {
        return new PersonHappening(key, what, reader.text("role", TextShape.NAME));
    }
}

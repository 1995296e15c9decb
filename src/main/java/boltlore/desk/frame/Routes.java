package boltlore.desk.frame;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Which call is answered by which page, of all rooms. A path that says all its words goes before one that names something. */
final class Routes {

    static final Routes NONE = new Routes(List.of());

    private final List<Door> doors = new ArrayList<>();

    /** A path of a room, in its segments, and what answers it. */
    private record Door(boolean acts, List<String> path, Room room, Function<Call, Answer> answer) {

        /** What stands in the place of names; null where the path is another one. */
        @Nullable
        Map<String, String> names(List<String> asked) {
            Map<String, String> names = new LinkedHashMap<>();
            if (asked.size() != path.size()) {
                return null;
            }
            for (int i = 0; i < asked.size(); i++) {
                String segment = path.get(i);
                if (segment.startsWith("{") && !asked.get(i).isEmpty()) {
                    names.put(segment.substring(1, segment.length() - 1), asked.get(i));
                } else if (!segment.equals(asked.get(i))) {
                    return null;
                }
            }
            return names;
        }
    }

    /** What answers a call. */
    record Found(Room room, Function<Call, Answer> answer, Map<String, String> names) {}

    Routes(List<Room> rooms) {
        rooms.forEach(room -> room.open(new Room.Doors() {
            @Override
            public void look(String path, Function<Call, Answer> answer) {
                doors.add(new Door(false, segments(path), room, answer));
            }

            @Override
            public void act(String path, Function<Call, Answer> answer) {
                doors.add(new Door(true, segments(path), room, answer));
            }
        }));
        doors.sort((one, other) -> Long.compare(named(one), named(other)));
    }

    private static long named(Door door) {
        return door.path().stream().filter(segment -> segment.startsWith("{")).count();
    }

    private static List<String> segments(String path) {
        return Arrays.asList(path.split("/", -1));
    }

    /**
     * What answers a path.
     *
     * @param acts whether a form was sent
     * @param path as it was asked for, with its signs coded (RFC 3986)
     */
    Optional<Found> find(boolean acts, String path) {
        List<String> asked = segments(path).stream().map(Routes::decoded).toList();
        for (Door door : doors) {
            Map<String, String> names = door.acts() == acts ? door.names(asked) : null;
            if (names != null) {
                return Optional.of(new Found(door.room(), door.answer(), names));
            }
        }
        return Optional.empty();
    }

    /** A plus is a plus within a path; what is no code is nothing that a door is named by. */
    private static String decoded(String segment) {
        try {
            return URLDecoder.decode(segment.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException malformed) {
            return segment;
        }
    }
}

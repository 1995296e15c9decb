package boltlore.architecture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The house as a Mermaid flow chart: a box for each package of the first depth, from the top of the house to its bottom,
 * with arrows to what it stands on; uses that follow from others are left out. What is inside a package stands in its box.
 */
final class Picture {

    private static final Pattern DRAWN = Pattern.compile("```mermaid\\n.*?```\\n", Pattern.DOTALL);

    private Picture() {}

    static String of(Plan house) {
        Plan rooms = house.toDepth(1).bare();
        StringBuilder drawn = new StringBuilder("```mermaid\nflowchart TD\n");
        for (String room : rooms.uses().keySet()) {
            NavigableSet<String> inside = inside(house, room);
            if (!inside.isEmpty()) {
                drawn.append("    %s[\"<b>%s</b><br>%s\"]%n".formatted(room, room, wrapped(inside)));
            }
        }
        List<String> topDown = new ArrayList<>(rooms.uses().keySet());
        Collections.sort(topDown);
        for (String room : topDown) {
            NavigableSet<String> used = rooms.uses().get(room);
            if (!used.isEmpty()) {
                drawn.append("    %s --> %s%n".formatted(room, String.join(" & ", used)));
            }
        }
        return drawn.append("```\n").toString();
    }

    private static NavigableSet<String> inside(Plan house, String room) {
        NavigableSet<String> inside = new TreeSet<>();
        house.uses().keySet().stream()
                .filter(name -> name.startsWith(room + "."))
                .map(name -> name.split("\\.", -1)[1])
                .forEach(inside::add);
        return inside;
    }

    private static String wrapped(NavigableSet<String> names) {
        StringBuilder text = new StringBuilder();
        int count = 0;
        for (String name : names) {
            text.append(count == 0 ? "" : count % 4 == 0 ? "<br>" : ", ").append(name);
            count++;
        }
        return text.toString();
    }

    /** The text with this picture in the place of the one that it shows. */
    static String into(String text, String picture) {
        return DRAWN.matcher(text).replaceFirst(Matcher.quoteReplacement(picture));
    }
}

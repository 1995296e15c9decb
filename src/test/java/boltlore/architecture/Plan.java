package boltlore.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which package uses which, below one root; written as a line for each package, from the bottom of the house to its top:
 * 'bill: catalogue order'. A line that begins with a blank goes on with the one before.
 *
 * @param uses each package with those that it uses itself, in the order of the lines
 */
record Plan(Map<String, NavigableSet<String>> uses) {

    private static final int WIDEST = 108;

    static Plan parse(String text) {
        Map<String, NavigableSet<String>> uses = new LinkedHashMap<>();
        for (String line : text.replaceAll("\\n[ ]+", " ").lines().toList()) {
            String[] room = line.split(":", 2);
            uses.put(room[0], words(room[1]));
        }
        return new Plan(uses);
    }

    /** What these classes use of each other, by their packages' names. */
    static Plan of(JavaClasses code, String root) {
        Set<String> own = code.stream().map(type -> below(root, type)).collect(Collectors.toCollection(TreeSet::new));
        Map<String, NavigableSet<String>> uses = new TreeMap<>();
        for (JavaClass type : code) {
            String from = below(root, type);
            if (from.isEmpty()) {
                continue;
            }
            NavigableSet<String> used = uses.computeIfAbsent(from, any -> new TreeSet<>());
            type.getDirectDependenciesFromSelf().stream()
                    .map(use -> below(root, use.getTargetClass().getBaseComponentType()))
                    .filter(to -> own.contains(to) && !to.isEmpty() && !to.equals(from))
                    .forEach(used::add);
        }
        return new Plan(uses);
    }

    /** Empty for the root itself, and for what is outside. */
    private static String below(String root, JavaClass type) {
        String name = type.getPackageName();
        return name.startsWith(root + ".") ? name.substring(root.length() + 1) : "";
    }

    private static NavigableSet<String> words(String text) {
        return Arrays.stream(text.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Everything in which these packages are not as this plan says. */
    List<String> differences(Plan built) {
        List<String> told = new ArrayList<>();
        List<String> order = List.copyOf(uses.keySet());
        built.uses.keySet().stream()
                .filter(room -> !uses.containsKey(room))
                .forEach(room -> told.add(room + " is not on the plan"));
        for (String room : order) {
            if (!built.uses.containsKey(room)) {
                told.add(room + " is on the plan and holds no class");
                continue;
            }
            Set<String> may = uses.get(room);
            Set<String> does = built.uses.get(room);
            does.stream()
                    .filter(other -> !may.contains(other))
                    .forEach(other -> told.add(room + " uses " + other + ", which is no right of it"));
            may.stream()
                    .filter(other -> !does.contains(other))
                    .forEach(other -> told.add(room + " has a right to " + other + " and does not use it"));
            may.stream()
                    .filter(other -> order.indexOf(other) > order.indexOf(room))
                    .forEach(other -> told.add(room + " stands on " + other + ", which stands above it"));
        }
        return told;
    }

    /** This plan with what is built now: lines stay in their order, a new package comes right above what it uses. */
    Plan renewed(Plan built) {
        List<String> order = new ArrayList<>(uses.keySet());
        order.retainAll(built.uses.keySet());
        List<String> more = new ArrayList<>(built.uses.keySet());
        more.removeAll(order);
        while (!more.isEmpty()) {
            String room = more.stream()
                    .filter(one -> Collections.disjoint(built.uses.get(one), more))
                    .findFirst()
                    .orElse(more.get(0));
            more.remove(room);
            int highest =
                    built.uses.get(room).stream().mapToInt(order::indexOf).max().orElse(-1);
            order.add(highest + 1, room);
        }
        Map<String, NavigableSet<String>> renewed = new LinkedHashMap<>();
        order.forEach(room -> renewed.put(room, built.uses.get(room)));
        return new Plan(renewed);
    }

    String written() {
        StringBuilder text = new StringBuilder();
        uses.forEach((room, used) -> {
            StringBuilder line = new StringBuilder(room + ":");
            for (String other : used) {
                if (line.length() + other.length() >= WIDEST) {
                    text.append(line).append('\n');
                    line = new StringBuilder("   ");
                }
                line.append(' ').append(other);
            }
            text.append(line).append('\n');
        });
        return text.toString();
    }

    /** With only so many of the words of each package's name, what is inside of one joined together. */
    Plan toDepth(int depth) {
        Map<String, NavigableSet<String>> joined = new LinkedHashMap<>();
        uses.forEach((room, used) -> {
            String from = cut(room, depth);
            NavigableSet<String> all = joined.computeIfAbsent(from, any -> new TreeSet<>());
            used.stream()
                    .map(other -> cut(other, depth))
                    .filter(to -> !to.equals(from))
                    .forEach(all::add);
        });
        return new Plan(joined);
    }

    static String cut(String room, int depth) {
        return Arrays.stream(room.split("\\.")).limit(depth).collect(Collectors.joining("."));
    }

    /** Without uses that follow from others: of what a package uses, only what nothing else that it uses stands on. */
    Plan bare() {
        Map<String, NavigableSet<String>> bare = new LinkedHashMap<>();
        uses.forEach((room, used) -> {
            NavigableSet<String> own = new TreeSet<>(used);
            used.forEach(other -> own.removeAll(below(other)));
            bare.put(room, own);
        });
        return new Plan(bare);
    }

    private Set<String> below(String room) {
        Set<String> all = new TreeSet<>();
        List<String> open = new ArrayList<>(uses.getOrDefault(room, new TreeSet<>()));
        while (!open.isEmpty()) {
            String next = open.remove(open.size() - 1);
            if (all.add(next)) {
                open.addAll(uses.getOrDefault(next, new TreeSet<>()));
            }
        }
        return all;
    }
}

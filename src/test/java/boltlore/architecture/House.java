package boltlore.architecture;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/** The plan of the house: every room (a package below the root), what stands below it, and where each library lives. */
final class House {

    /** Rooms on the plan that hold no class yet. A room leaves this list with its first class; all others must hold some. */
    static final Set<String> NOT_BUILT_YET = Set.of("book", "desk");

    /** Library root to the one package that may know it. */
    static final Map<String, String> LIBRARIES = Map.of(
            "org.drools", "resolution.rules",
            "org.kie", "resolution.rules",
            "com.fasterxml.jackson", "json",
            "org.logicng", "logic",
            "org.apache.poi", "report.xlsx",
            "org.openxmlformats", "report.xlsx",
            "org.apache.xmlbeans", "report.xlsx",
            "org.apache.commons.compress", "report.xlsx",
            "org.apache.commons.csv", "csv",
            "picocli", "cli");

    /** The rooms that touch the world as it is now; everything else is told the date. */
    static final List<String> WITH_A_CLOCK = List.of("cli", "desk", "book");

    private static final Map<String, List<String>> STANDS_ON = standsOn();

    private House() {}

    private static Map<String, List<String>> standsOn() {
        Map<String, List<String>> plan = new LinkedHashMap<>();
        plan.put("measure", List.of());
        plan.put("faults", List.of("measure"));
        plan.put("findings", List.of("measure"));
        plan.put("json", List.of("faults"));
        plan.put("csv", List.of("faults"));
        plan.put("catalogue", List.of("json"));
        plan.put("choices", List.of("catalogue"));
        plan.put("order", List.of("choices"));
        plan.put("resolution", List.of("order", "findings"));
        plan.put("power", List.of("choices"));
        plan.put("report", List.of("catalogue", "findings"));
        plan.put("bill", List.of("resolution"));
        plan.put("explanation", List.of("bill", "power"));
        plan.put("answers", List.of("trades"));
        plan.put("logic", List.of("choices"));
        plan.put("trades", List.of("explanation", "report", "csv"));
        plan.put("choosing", List.of("proof", "trades", "answers"));
        plan.put("proof", List.of("logic", "resolution", "report"));
        plan.put("exports", List.of("report"));
        plan.put("checking", List.of("trades"));
        plan.put("book", List.of("bill"));
        plan.put("desk", List.of("exports", "answers", "checking", "book", "choosing", "proof"));
        plan.put("cli", List.of("desk"));
        return plan;
    }

    static Set<String> rooms() {
        return STANDS_ON.keySet();
    }

    /** The room itself and everything below it. */
    static NavigableSet<String> mayUse(String room) {
        NavigableSet<String> all = new TreeSet<>(Set.of(room));
        for (String below : STANDS_ON.getOrDefault(room, List.of())) {
            all.addAll(mayUse(below));
        }
        return all;
    }
}

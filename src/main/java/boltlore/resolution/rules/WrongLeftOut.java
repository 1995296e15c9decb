package boltlore.resolution.rules;

import boltlore.catalogue.Line;
import boltlore.faults.Fault;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.resolution.FamilyPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Says of each line that an order leaves out wrongly why it cannot be left out, and what it carries. */
final class WrongLeftOut {

    private WrongLeftOut() {}

    static List<Fault> among(Set<LineName> leftOut, Set<LineName> unused, Set<LineName> linesCalled, FamilyPlan plan) {
        List<Fault> faults = new ArrayList<>();
        for (LineName name : leftOut) {
            if (!unused.contains(name)) {
                String found = "line '" + name + "' " + why(plan.line(name), linesCalled, plan);
                faults.add(new Fault(
                        "", 0, "/leftOut", found, "only brackets that support nothing in this kit", advice(unused)));
            }
        }
        return faults;
    }

    private static String why(Line line, Set<LineName> linesCalled, FamilyPlan plan) {
        if (!linesCalled.contains(line.name())) {
            return "is not in this kit";
        }
        if (!line.isBracket()) {
            return "is no bracket";
        }
        String carried = line.carries().stream()
                .flatMap(position -> called(position, linesCalled, plan).stream())
                .collect(Collectors.joining("', '"));
        return "carries '" + carried + "'";
    }

    private static List<String> called(PositionName position, Set<LineName> linesCalled, FamilyPlan plan) {
        return plan.family().position(position).stream()
                .flatMap(at -> at.lines().stream())
                .map(Line::name)
                .filter(linesCalled::contains)
                .map(LineName::text)
                .toList();
    }

    private static String advice(Set<LineName> unused) {
        return unused.isEmpty()
                ? "This kit has no unused bracket: take the line off the list"
                : "Unused in this kit: "
                        + unused.stream().map(LineName::text).sorted().collect(Collectors.joining(", "));
    }
}

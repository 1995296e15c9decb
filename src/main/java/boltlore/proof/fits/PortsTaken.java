package boltlore.proof.fits;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fits;
import boltlore.catalogue.Flow;
import boltlore.catalogue.Line;
import boltlore.catalogue.Port;
import boltlore.catalogue.Position;
import boltlore.logic.All;
import boltlore.logic.Any;
import boltlore.logic.Term;
import boltlore.logic.ThresholdConditions;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.proof.KitView;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How often the ports at a position are joined, against how many of them there are; and what blanks close the rest. */
final class PortsTaken {

    private record Closed(Join.Taken port, @Nullable PartNumber blank) {}

    /** Ports of one name at one position that one blank closes: how many there are, and how many of them are joined. */
    private static final class Use {

        private final List<LineName> lines = new ArrayList<>();
        private final List<Condition> fitted = new ArrayList<>();
        private final List<Term> pieces = new ArrayList<>();
        private final List<Term> joined = new ArrayList<>();
    }

    private final KitView kit;
    private final Map<Closed, Use> uses = new LinkedHashMap<>();
    private final Map<Join.Taken, List<Use>> at = new HashMap<>();

    /** Of flows for which the family has a path or circuit; it says nothing of others. */
    private PortsTaken(KitView kit) {
        this.kit = kit;
        Set<Flow> flows =
                kit.family().fits().runs().stream().map(Fits.Run::flow).collect(Collectors.toSet());
        for (Position position : kit.family().positions()) {
            for (Line line : position.lines()) {
                kit.catalogue().part(line.part()).ports().stream()
                        .filter(port -> port.joint() != null
                                && flows.contains(port.joint().flow()))
                        .forEach(port -> fitted(position, line, port));
            }
        }
        uses.forEach((closed, use) ->
                at.computeIfAbsent(closed.port(), port -> new ArrayList<>()).add(use));
        Join.once(kit).forEach(this::joined);
    }

    private void fitted(Position position, Line line, Port port) {
        Closed closed = new Closed(new Join.Taken(position.name(), port.name()), port.blank());
        Use use = uses.computeIfAbsent(closed, at -> new Use());
        Condition in = kit.kit().in(line.name());
        use.lines.add(line.name());
        use.fitted.add(in);
        boolean oneLength = kit.catalogue().part(line.part()).unit().equals("m");
        use.pieces.add(new Term(oneLength ? BigDecimal.ONE : line.quantity(), in));
    }

    /** Whatever stands at the other end: that it is missing there is told of the path, and not again of each port. */
    private void joined(Join join) {
        join.taken()
                .distinct()
                .forEach(end -> at.getOrDefault(end, List.of())
                        .forEach(use ->
                                use.joined.add(new Term(BigDecimal.ONE, All.of(join.when(), Any.of(use.fitted))))));
    }

    static List<FitFinding.Possible> twice(KitView kit) {
        List<FitFinding.Possible> all = new ArrayList<>();
        new PortsTaken(kit)
                .uses.forEach((at, use) -> all.add(FitFinding.PORT_TAKEN_TWICE.when(
                        kit.sums().reaches(use.pieces, use.joined).map(Any::but),
                        at.port().position().text(),
                        at.port().port(),
                        use.lines,
                        "port",
                        at.port().port(),
                        "position",
                        Broken.said(kit, at.port().position()))));
        return all;
    }

    static List<FitFinding.Possible> open(KitView kit) {
        PortsTaken taken = new PortsTaken(kit);
        List<FitFinding.Possible> all = new ArrayList<>();
        taken.uses.forEach((at, use) -> {
            if (at.blank() == null) {
                all.add(taken.nowhere(at, use));
            }
        });
        taken.uses.keySet().stream()
                .map(Closed::blank)
                .filter(Objects::nonNull)
                .distinct()
                .map(taken::unblanked)
                .forEach(all::add);
        return all;
    }

    private FitFinding.Possible nowhere(Closed at, Use use) {
        return FitFinding.PORT_LEADS_NOWHERE.when(
                kit.sums().reaches(use.joined, use.pieces).map(Any::but),
                at.port().position().text(),
                at.port().port(),
                use.lines,
                "port",
                at.port().port(),
                "position",
                Broken.said(kit, at.port().position()));
    }

    /** Ports that one blank closes share what there is of it. */
    private FitFinding.Possible unblanked(PartNumber blank) {
        List<String> ports = new ArrayList<>();
        List<LineName> lines = new ArrayList<>();
        List<Term> left = new ArrayList<>();
        boolean small = true;
        for (Map.Entry<Closed, Use> each : uses.entrySet()) {
            if (blank.equals(each.getKey().blank())) {
                Use use = each.getValue();
                Optional<List<Term>> open =
                        kit.sums().positivePart(ThresholdConditions.difference(use.pieces, use.joined));
                small &= open.isPresent();
                left.addAll(open.orElse(List.of()));
                lines.addAll(use.lines);
                ports.add(each.getKey().port().position() + " "
                        + each.getKey().port().port());
            }
        }
        return FitFinding.BLANKS_TOO_FEW.when(
                small ? kit.sums().reaches(kit.parts().terms(blank), left).map(Any::but) : Optional.empty(),
                blank.text(),
                "blank",
                lines.stream().distinct().toList(),
                "blank",
                BoxContents.named(kit, blank),
                "ports",
                ports);
    }
}

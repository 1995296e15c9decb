package boltlore.trial;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A position: takes one line, always due, held by nothing, unless told otherwise. */
public final class TrialPosition {

    private final PositionName name;
    private Fill fill = Fill.ONE;
    private @Nullable Condition due;
    private @Nullable PositionName under;
    private final List<List<LineName>> heldBy = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    private TrialPosition(String name) {
        this.name = new PositionName(name);
    }

    public static TrialPosition position(String name) {
        return new TrialPosition(name);
    }

    public TrialPosition fill(Fill how) {
        fill = how;
        return this;
    }

    public TrialPosition due(Condition condition) {
        due = condition;
        return this;
    }

    public TrialPosition under(String parent) {
        under = new PositionName(parent);
        return this;
    }

    public TrialPosition heldBy(String... lineNames) {
        heldBy.add(Say.lines(lineNames));
        return this;
    }

    public TrialPosition route(Condition when, int needsMm, int slackMm) {
        routes.add(new Route(when, needsMm, slackMm));
        return this;
    }

    public TrialPosition line(TrialLine line) {
        lines.add(line.done());
        return this;
    }

    public Position done() {
        return new Position(
                name,
                Wording.english("Position " + name),
                "drive",
                "front",
                "",
                under,
                fill,
                due,
                List.copyOf(heldBy),
                List.copyOf(routes),
                List.copyOf(lines));
    }
}

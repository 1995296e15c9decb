package boltlore.sketch;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A position in the making: free to be filled or not, in stage 'front' and no bag until a test says otherwise. */
public final class PositionSketch {

    private final PositionName name;
    private final List<Line> lines = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private String stage = "front";
    private String bag = "";
    private Fill fill = Fill.FREE;
    private Wording says;

    private PositionSketch(String name) {
        this.name = new PositionName(name);
        this.says = Wording.english("Place " + name);
    }

    public static PositionSketch at(String name) {
        return new PositionSketch(name);
    }

    public static Condition is(String option, String... values) {
        return new Condition.Is(new OptionName(option), new TreeSet<>(Set.of(values)));
    }

    public static Need each(String part, String quantity) {
        return new Need(
                new PartNumber(part), new Need.Each(new BigDecimal(quantity)), Condition.ALWAYS, "It is fixed so.");
    }

    public static Need atJoint(String joint, String part, String atLeast) {
        return new Need(
                new PartNumber(part),
                new Need.AtJoint(joint, new BigDecimal(atLeast)),
                Condition.ALWAYS,
                "They share it.");
    }

    public PositionSketch stage(String value) {
        stage = value;
        return this;
    }

    public PositionSketch bag(String value) {
        bag = value;
        return this;
    }

    public PositionSketch says(Wording value) {
        says = value;
        return this;
    }

    public PositionSketch route(Condition when, int needsMm, int slackMm) {
        routes.add(new Route(when, needsMm, slackMm));
        return this;
    }

    public PositionSketch fill(Fill value) {
        fill = value;
        return this;
    }

    public PositionSketch line(String line, String part, String quantity, Need... needs) {
        return line(line, part, quantity, Condition.ALWAYS, needs);
    }

    public PositionSketch line(String line, String part, String quantity, Condition when, Need... needs) {
        return add(line, part, quantity, when, List.of(), List.of(needs));
    }

    public PositionSketch bracket(String line, String part, String carries, Need... needs) {
        return add(line, part, "1", Condition.ALWAYS, List.of(new PositionName(carries)), List.of(needs));
    }

    /** A line that expects so many of a part beside it. */
    public PositionSketch expecting(String line, String part, String expected, String atLeast) {
        lines.add(new Line(
                new LineName(line),
                new PartNumber(part),
                BigDecimal.ONE,
                Condition.ALWAYS,
                List.of(),
                List.of(),
                List.of(new Expectation(
                        new Expectation.OfPart(new PartNumber(expected)),
                        new BigDecimal(atLeast),
                        Condition.ALWAYS,
                        "It is fitted with them.")),
                ""));
        return this;
    }

    private PositionSketch add(
            String line, String part, String quantity, Condition when, List<PositionName> carries, List<Need> needs) {
        lines.add(new Line(
                new LineName(line),
                new PartNumber(part),
                new BigDecimal(quantity),
                when,
                carries,
                needs,
                List.of(),
                ""));
        return this;
    }

    public Position draw() {
        return new Position(name, says, "drive", stage, bag, null, fill, null, List.of(), routes, List.copyOf(lines));
    }
}

package boltlore.trial;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A line: one of its part in every kit, unless told otherwise. */
public final class TrialLine {

    private final LineName name;
    private final PartNumber part;
    private BigDecimal quantity = BigDecimal.ONE;
    private Condition when = Condition.ALWAYS;
    private Effectivity effectivity = Effectivity.ALWAYS;
    private final List<PositionName> carries = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private final List<Expectation> expects = new ArrayList<>();

    private TrialLine(String name, String part) {
        this.name = new LineName(name);
        this.part = new PartNumber(part);
    }

    public static TrialLine line(String name, String part) {
        return new TrialLine(name, part);
    }

    public TrialLine quantity(String amount) {
        quantity = new BigDecimal(amount);
        return this;
    }

    public TrialLine when(Condition condition) {
        when = condition;
        return this;
    }

    /** The condition that it has so far, for orders within those ends only. */
    public TrialLine effective(Effectivity ends, List<EffectivityScale> scales) {
        effectivity = ends;
        when = ends.with(when, scales);
        return this;
    }

    public TrialLine carries(String position) {
        carries.add(new PositionName(position));
        return this;
    }

    public TrialLine needs(Need need) {
        needs.add(need);
        return this;
    }

    public TrialLine expects(Expectation expectation) {
        expects.add(expectation);
        return this;
    }

    public Line done() {
        return new Line(
                name,
                part,
                quantity,
                when,
                List.copyOf(carries),
                List.copyOf(needs),
                List.copyOf(expects),
                "",
                effectivity,
                List.of());
    }
}

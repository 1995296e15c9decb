package boltlore.catalogue.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Part;
import boltlore.json.Values;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;

/** What is counted comes in whole numbers. */
final class WholeQuantities {

    private final Catalogue catalogue;
    private final Reading reading;

    WholeQuantities(Catalogue catalogue, Reading reading) {
        this.catalogue = catalogue;
        this.reading = reading;
    }

    void check() {
        for (Part part : catalogue.parts().values()) {
            part.contains().forEach(child -> check(child, child.part(), child.quantity()));
            needs(part.needs());
        }
        catalogue.families().values().forEach(this::check);
    }

    private void check(Family family) {
        for (Line line : family.lines().toList()) {
            check(line, line.part(), line.quantity());
            needs(line.needs());
            expects(line.expects());
        }
        for (Companion companion : family.companions()) {
            needs(companion.needs());
            expects(companion.expects());
        }
    }

    private void needs(List<Need> needs) {
        for (Need need : needs) {
            if (need.ask() instanceof Need.AtJoint shared) {
                check(need, need.part(), shared.atLeast());
            } else if (need.ask() instanceof Need.Each each) {
                check(need, need.part(), each.quantity());
            }
        }
    }

    private void expects(List<Expectation> expects) {
        for (Expectation expectation : expects) {
            if (expectation.target() instanceof Expectation.OfPart of) {
                check(expectation, of.part(), expectation.atLeast());
            }
        }
    }

    private void check(Object where, PartNumber number, BigDecimal quantity) {
        Part part = catalogue.parts().get(number);
        if (part != null && PartsFile.WHOLE_UNITS.contains(part.unit()) && !Values.isWhole(quantity)) {
            reading.faults()
                    .add(reading.sources()
                            .of(where)
                            .fault(
                                    quantity.toPlainString() + " of " + number,
                                    "a whole number, because its unit is '" + part.unit() + "'",
                                    "Change the quantity, or the part's unit."));
        }
    }
}

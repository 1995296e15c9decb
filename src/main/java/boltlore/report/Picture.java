package boltlore.report;

import boltlore.report.drawing.Drawing;

/** A drawing across the page, no larger than it is. In words it is what the drawing says of itself. */
public record Picture(Drawing drawing) implements Block {

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.picture(this);
    }
}

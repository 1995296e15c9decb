package boltlore.report;

import boltlore.report.drawing.Drawing;

/** A drawing across the page, printed at its own size where its columns are as wide. In words it is what it says of itself. */
public record Picture(Drawing drawing) implements Block {

    /** What it shows, in words. */
    public String says() {
        return drawing.says();
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.picture(this);
    }
}

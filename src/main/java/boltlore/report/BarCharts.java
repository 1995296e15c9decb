package boltlore.report;

import java.util.List;

/** One chart across the page, or two side by side. */
public record BarCharts(List<BarChart> charts) implements Block {

    public BarCharts {
        charts = List.copyOf(charts);
        if (charts.isEmpty() || charts.size() > 2) {
            throw new IllegalArgumentException("One or two charts stand side by side, not " + charts.size());
        }
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.charts(this);
    }
}

package boltlore.trades.coating;

import boltlore.catalogue.Coater;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.trades.StoppedOrder;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** All that somebody must know of a coating job before it is hung. */
final class CoatingFindings {

    private final CoatJob job;
    private final CoatPlan plan;

    private CoatingFindings(CoatJob job) {
        this.job = job;
        this.plan = job.plan();
    }

    static Findings find(CoatJob job) {
        CoatingFindings of = new CoatingFindings(job);
        return Stream.of(of.onHold(), of.tooLarge(), of.masks(), of.sizes(), of.late(), of.lightness(), of.stopped())
                .flatMap(some -> some)
                .collect(Findings.collected());
    }

    private Stream<Finding> stopped() {
        return job.stopped().stream().map(StoppedOrder::finding);
    }

    private Stream<Finding> onHold() {
        return plan.onHold().stream().map(row -> find(CoatingFinding.ON_HOLD, row));
    }

    private Stream<Finding> tooLarge() {
        return Stream.concat(
                plan.batches().stream()
                        .flatMap(batch -> batch.tooBig().stream())
                        .map(big -> find(CoatingFinding.TOO_LARGE_FOR_OVEN, big.row(), "why", big.why())),
                plan.sendOuts().stream().flatMap(out -> out.tooBig().stream().map(big -> sent(big, out.coater()))));
    }

    private static Finding sent(TooBig big, Coater coater) {
        return find(CoatingFinding.TOO_LARGE_SENT_OUT, big.row(), "coater", coater.name(), "why", big.why());
    }

    /** Of what we mask ourselves. */
    private Stream<Finding> masks() {
        List<BatchRow> rows = Stream.concat(
                        own(),
                        plan.sendOuts().stream()
                                .filter(out -> !out.coater().fitsMasks())
                                .flatMap(out -> out.rows().stream()))
                .toList();
        return BareSpots.of(rows).stream()
                .filter(spots -> spots.masked() && spots.mask(job.shop()).isEmpty())
                .map(spots -> Finding.of(
                        CoatingFinding.MASK_NOT_HELD,
                        spots.says(),
                        "count",
                        spots.count(),
                        "spot",
                        spots.says(),
                        "orders",
                        orders(rows.stream().filter(spots::areOn))));
    }

    private Stream<Finding> sizes() {
        return own().filter(row -> row.coat().envelope() == null).map(row -> find(CoatingFinding.SIZE_NOT_KNOWN, row));
    }

    private Stream<BatchRow> own() {
        return plan.batches().stream().flatMap(batch -> batch.rows().stream());
    }

    private Stream<Finding> late() {
        return job.through().stream().filter(order -> order.late(job.start())).map(order -> {
            String name = order.order().name();
            return Finding.of(
                    CoatingFinding.COATED_TOO_LATE,
                    name,
                    "order",
                    name,
                    "need",
                    written(order.needBy()),
                    "on",
                    written(order.on(job.start())));
        });
    }

    private static String written(@Nullable Object day) {
        return Objects.toString(day, "");
    }

    private Stream<Finding> lightness() {
        return plan.runs().stream()
                .map(PowderRun::powder)
                .distinct()
                .filter(code -> {
                    var powder = job.shop().powders().get(code);
                    return powder == null || powder.lightness() == null;
                })
                .map(code -> Finding.of(CoatingFinding.LIGHTNESS_NOT_KNOWN, code, "powder", code));
    }

    private static Finding find(CoatingFinding kind, BatchRow row, Object... more) {
        Object[] of = {
            "pieces",
            row.pieces(),
            "part",
            number(row),
            "name",
            row.part().name(),
            "marks",
            marks(row),
            "orders",
            orders(Stream.of(row))
        };
        return Finding.of(
                kind, number(row), Stream.of(of, more).flatMap(Stream::of).toArray());
    }

    private static String number(BatchRow row) {
        return row.part().number().text();
    }

    private static List<String> orders(Stream<BatchRow> rows) {
        return rows.flatMap(row -> row.marks().stream().map(PieceMarks::order))
                .distinct()
                .sorted()
                .toList();
    }

    private static String marks(BatchRow row) {
        return String.join(", ", row.marks().stream().map(PieceMarks::written).toList());
    }
}

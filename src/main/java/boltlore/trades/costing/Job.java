package boltlore.trades.costing;

import boltlore.bill.Costs;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.trades.costing.path.Timing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;

/**
 * A part to make for this order.
 *
 * @param finish that it takes, or empty
 * @param count pieces to make, scrap included, rounded up
 * @param extra how many of them are extras, outside the kit
 */
public record Job(Part part, String finish, BigDecimal count, BigDecimal extra, Timing timing) {

    private static final Comparator<Job> BY_NEED = Comparator.<Job>comparingInt(
                    job -> -job.timing().startDays())
            .thenComparing(job -> job.part().number());

    /** What must be released first stands first. */
    public static List<Job> of(CostedBill costed) {
        return Demand.of(costed, Source.MAKE).values().stream()
                .map(Job::of)
                .sorted(BY_NEED)
                .toList();
    }

    private static Job of(Demand demand) {
        BigDecimal count =
                Costs.toIssue(demand.quantity(), demand.part().scrapPercent()).setScale(0, RoundingMode.UP);
        return new Job(demand.part(), demand.finish(), count, demand.extraQuantity(), demand.timing());
    }

    /** Set-up once, then the run for each piece. */
    public BigDecimal minutes(Operation operation) {
        return operation.setUpMin().add(operation.runMin().multiply(count));
    }

    public BigDecimal minutes() {
        return part.making().operations().stream().map(this::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Of all these jobs together. */
    public static BigDecimal minutes(List<Job> jobs) {
        return jobs.stream().map(Job::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

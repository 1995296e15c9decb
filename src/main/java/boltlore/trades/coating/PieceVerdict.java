package boltlore.trades.coating;

import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One piece against its film, or what was read of it before it was read or coated again.
 *
 * @param replaced whether a later reading counts in its place
 */
public record PieceVerdict(FilmReading reading, FilmDemand demand, boolean replaced) {

    /** A lone reading so many times the others, or so small a part of them, is more likely typed wrong; common practice, no source. */
    private static final BigDecimal SLIP = BigDecimal.valueOf(5);

    /** In µm; null where it was not read. */
    public @Nullable BigDecimal mean() {
        return reading.isRead() ? FilmAcceptance.mean(reading.um()) : null;
    }

    public @Nullable BigDecimal lowest() {
        return reading.um().stream().reduce(BigDecimal::min).orElse(null);
    }

    @Nullable
    BigDecimal highest() {
        return reading.um().stream().reduce(BigDecimal::max).orElse(null);
    }

    /** Whether mean or lowest reading fall short. */
    public boolean tooThin() {
        return reading.isRead() && !demand.acceptance().accepts(reading.um());
    }

    /** Whether the mean or a reading is over the most that the powders' data allows. */
    public boolean tooThick() {
        BigDecimal highest = highest();
        return highest != null && highest.compareTo(BigDecimal.valueOf(demand.mostUm())) > 0;
    }

    /** Whether it may leave as it is. */
    public boolean good() {
        return !tooThin() && !tooThick() && reading.flaw().isEmpty();
    }

    /** The one reading that is far from all others, or null. */
    @Nullable
    BigDecimal slip() {
        List<BigDecimal> sorted = reading.um().stream().sorted().toList();
        if (sorted.size() < FilmAcceptance.READINGS) {
            return null;
        }
        BigDecimal least = sorted.get(0);
        BigDecimal most = sorted.get(sorted.size() - 1);
        if (most.compareTo(sorted.get(sorted.size() - 2).multiply(SLIP)) >= 0) {
            return most;
        }
        return least.multiply(SLIP).compareTo(sorted.get(1)) <= 0 ? least : null;
    }

    /** Why it is not good, in a few words; empty where it is. */
    public String why() {
        List<String> why = new ArrayList<>();
        if (!reading.flaw().isEmpty()) {
            why.add("by eye: " + reading.flaw());
        }
        if (tooThin()) {
            why.add("below minimum");
        }
        if (tooThick()) {
            why.add("above maximum");
        }
        return String.join("; ", why);
    }

    Stream<Finding> findings(int batch) {
        BigDecimal mean = mean();
        BigDecimal lowest = lowest();
        BigDecimal highest = highest();
        BigDecimal slip = slip();
        List<Finding> found = new ArrayList<>();
        BigDecimal least = BigDecimal.valueOf(demand.leastUm());
        BigDecimal most = BigDecimal.valueOf(demand.mostUm());
        BigDecimal floor = demand.acceptance().floorUm();
        if (!reading.flaw().isEmpty()) {
            found.add(of(FilmFinding.REJECTED_BY_EYE, batch, "flaw", reading.flaw()));
        }
        if (mean != null && lowest != null && highest != null) {
            BigDecimal shown = mean.setScale(1, RoundingMode.HALF_UP);
            limit(mean.compareTo(least) < 0, FilmFinding.MEAN_BELOW_MINIMUM, batch, "mean", shown, least, found);
            limit(
                    lowest.compareTo(floor) < 0,
                    FilmFinding.READING_BELOW_MINIMUM,
                    batch,
                    "reading",
                    lowest,
                    floor,
                    found);
            limit(mean.compareTo(most) > 0, FilmFinding.MEAN_ABOVE_MAXIMUM, batch, "mean", shown, most, found);
            boolean place = highest.compareTo(most) > 0 && mean.compareTo(most) <= 0;
            limit(place, FilmFinding.READING_ABOVE_MAXIMUM, batch, "reading", highest, most, found);
        }
        if (slip != null) {
            found.add(of(FilmFinding.SLIP_OF_TYPING, batch, "reading", slip));
        }
        return found.stream();
    }

    private void limit(
            boolean isSo,
            FilmFinding kind,
            int batch,
            String valueIs,
            BigDecimal value,
            BigDecimal limit,
            List<Finding> found) {
        if (isSo) {
            found.add(of(kind, batch, valueIs, value, "limit", limit));
        }
    }

    private Finding of(FilmFinding kind, int batch, Object... named) {
        Object[] all = new Object[named.length + 4];
        all[0] = "batch";
        all[1] = batch;
        all[2] = "piece";
        all[3] = reading.which();
        System.arraycopy(named, 0, all, 4, named.length);
        return Finding.of(kind, reading.which(), all);
    }
}

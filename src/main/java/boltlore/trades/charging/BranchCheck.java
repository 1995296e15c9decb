package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.PowerCable;
import boltlore.findings.Severity;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One cable with its load and its fuse.
 *
 * @param fuse null where none is ahead of it in the vehicle
 * @param carriesAmps what the cable carries for hours where it lies
 * @param comparisons all comparisons of it
 */
public record BranchCheck(
        Branch branch, @Nullable Fuse fuse, PowerCable cable, BigDecimal carriesAmps, List<Comparison> comparisons) {

    BranchCheck with(List<Comparison> more) {
        List<Comparison> all =
                Stream.concat(comparisons.stream(), more.stream()).toList();
        return new BranchCheck(branch, fuse, cable, carriesAmps, all);
    }

    /** 'OK', or the most serious of what was found. */
    public String verdict() {
        return comparisons.stream()
                .filter(comparison -> !comparison.holds())
                .map(comparison -> comparison.finding().severity())
                .min(Comparator.naturalOrder())
                .map(Severity::says)
                .orElse("OK");
    }
}

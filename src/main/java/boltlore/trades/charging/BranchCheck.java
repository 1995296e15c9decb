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
 * One cable with its load and what protects it.
 *
 * @param fuse at the end that feeds it, or null
 * @param farFuse at its other end, where that feeds it too, or null
 * @param carriesAmps what the cable carries for hours where it lies
 * @param load null where it is not known
 * @param drop null where length, load or voltage are not known
 * @param comparisons all comparisons of it
 */
public record BranchCheck(
        Branch branch,
        @Nullable Fuse fuse,
        @Nullable Fuse farFuse,
        PowerCable cable,
        BigDecimal carriesAmps,
        @Nullable BranchLoad load,
        @Nullable VoltageDrop drop,
        List<Comparison> comparisons) {

    BranchCheck with(List<Comparison> more) {
        List<Comparison> all =
                Stream.concat(comparisons.stream(), more.stream()).toList();
        return new BranchCheck(branch, fuse, farFuse, cable, carriesAmps, load, drop, all);
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

package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.PowerCable;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One cable with its load and its fuse.
 *
 * @param fuse null where none is ahead of it in the vehicle
 * @param carriesAmps what the cable carries for hours where it lies
 * @param judgements all comparisons of it
 */
public record BranchCheck(
        Branch branch, @Nullable Fuse fuse, PowerCable cable, BigDecimal carriesAmps, List<Judgement> judgements) {

    BranchCheck with(List<Judgement> more) {
        List<Judgement> all = Stream.concat(judgements.stream(), more.stream()).toList();
        return new BranchCheck(branch, fuse, cable, carriesAmps, all);
    }

    public Verdict verdict() {
        return judgements.stream().map(Judgement::verdict).reduce(Verdict.FINE, Verdict::worse);
    }
}

package boltlore.trades.coating;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A load while it is being hung. */
final class HangingLoad {

    private final LoadLimits limits;
    private final int number;
    private final long[] used = new long[LoadUnits.KINDS];
    private final List<BatchRow> hung = new ArrayList<>();
    private LoadSize size = LoadSize.NONE;
    private @Nullable BigDecimal thinnestMm;
    private @Nullable BigDecimal thickestMm;

    /** An empty load; number 0 until it gets one. */
    HangingLoad(LoadLimits limits, int number) {
        this.limits = limits;
        this.number = number;
    }

    /** How many more of the kind it takes. */
    int room(HungKind kind) {
        if (!together(kind.slowestMm())) {
            return 0;
        }
        long room = Integer.MAX_VALUE;
        for (int i = 0; i < LoadUnits.KINDS; i++) {
            if (kind.size().at(i) > 0) {
                room = Math.min(
                        room, (limits.most().at(i) - used[i]) / kind.size().at(i));
            }
        }
        return (int) room;
    }

    private boolean together(BigDecimal slowestMm) {
        return thinnestMm == null
                || thickestMm == null
                || limits.together(thinnestMm.min(slowestMm), thickestMm.max(slowestMm));
    }

    /** How full it were with one more of the kind. */
    double fullnessWith(HungKind kind) {
        double fullest = 0;
        for (int i = 0; i < LoadUnits.KINDS; i++) {
            long most = limits.most().at(i);
            fullest = Math.max(
                    fullest, most == 0 ? 0 : (double) (used[i] + kind.size().at(i)) / most);
        }
        return fullest;
    }

    void hang(HungKind kind, List<PieceMarks> marks) {
        int pieces = PieceMarks.count(marks);
        for (int i = 0; i < LoadUnits.KINDS; i++) {
            used[i] += kind.size().at(i) * pieces;
        }
        size = size.plus(LoadSize.of(kind.row()).times(pieces));
        hung.add(kind.row().of(marks));
        thinnestMm = thinnestMm == null ? kind.slowestMm() : thinnestMm.min(kind.slowestMm());
        thickestMm = thickestMm == null ? kind.slowestMm() : thickestMm.max(kind.slowestMm());
    }

    OvenLoad load() {
        return new OvenLoad(number, BatchRow.merged(hung), size);
    }
}

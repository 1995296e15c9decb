package boltlore.trades.cutting;

import boltlore.catalogue.Cut;
import boltlore.trades.cutting.LaidPiece.LaidEnd;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Lays the pieces of one bar in a row from the head: square ones first, longest first; then those of each slant, so turned
 * that as many slanted ends as can be lie against each other.
 */
final class BarLayout {

    private record Piece(PieceSet set, Cut cut, boolean nests) {

        Stream<Piece> times(int count) {
            return Stream.generate(() -> this).limit(count);
        }

        BigDecimal slant() {
            return nests
                    ? cut.endAngles().get(0).abs().max(cut.endAngles().get(1).abs())
                    : BigDecimal.ZERO;
        }

        boolean isSingle() {
            return cut.endAngles().get(0).signum() == 0
                    || cut.endAngles().get(1).signum() == 0;
        }
    }

    private static final Comparator<Piece> LONGEST_FIRST = Comparator.comparing(
                    (Piece piece) -> piece.cut().lengthMm(), Comparator.reverseOrder())
            .thenComparing(piece -> piece.set().order())
            .thenComparing(piece -> piece.set().part().number())
            .thenComparing(piece -> piece.set().number());

    private final Sawing sawing;
    private final List<LaidPiece> laid = new ArrayList<>();
    private long at;
    private LaidEnd last = LaidEnd.SQUARE;
    private boolean lastNests;

    private BarLayout(Sawing sawing, BigDecimal headTrimMm) {
        this.sawing = sawing;
        this.at = Sawing.up(headTrimMm);
    }

    static BarLayout of(List<PieceSet> sets, Sawing sawing, BigDecimal headTrimMm) {
        BarLayout layout = new BarLayout(sawing, headTrimMm);
        SortedMap<BigDecimal, List<Piece>> bySlant = new TreeMap<>();
        sets.stream()
                .flatMap(set ->
                        set.cuts().stream().flatMap(cut -> new Piece(set, cut, sawing.nests(set)).times(cut.count())))
                .sorted(LONGEST_FIRST)
                .forEach(piece -> bySlant.computeIfAbsent(piece.slant().stripTrailingZeros(), any -> new ArrayList<>())
                        .add(piece));
        bySlant.forEach((slant, pieces) -> layout.row(slant, pieces));
        return layout;
    }

    List<LaidPiece> pieces() {
        return laid;
    }

    /** What is left of a bar of that length after the last cut, to the tenth of a millimetre downwards. */
    BigDecimal restMm(BigDecimal barMm) {
        return Sawing.mm(Math.max(0, Sawing.down(barMm) - at - sawing.kerf(last.degrees())))
                .setScale(1, RoundingMode.FLOOR);
    }

    /** A piece with one slanted end begins the row, those with two follow, the others close it and go on in pairs. */
    private void row(BigDecimal slant, List<Piece> pieces) {
        boolean square = slant.signum() == 0;
        List<Piece> single =
                pieces.stream().filter(piece -> !square && piece.isSingle()).toList();
        single.stream().limit(1).forEach(piece -> lay(piece, BigDecimal.ZERO, slant));
        pieces.stream().filter(piece -> square || !piece.isSingle()).forEach(this::layAsItIs);
        for (int i = 1; i < single.size(); i++) {
            boolean first = i % 2 == 1;
            lay(single.get(i), first ? slant : BigDecimal.ZERO, first ? BigDecimal.ZERO : slant);
        }
    }

    private void layAsItIs(Piece piece) {
        lay(piece, piece.cut().endAngles().get(0), piece.cut().endAngles().get(1));
    }

    private void lay(Piece piece, BigDecimal left, BigDecimal right) {
        boolean against = liesAgainstLast(piece, left);
        int lean = against ? last.lean() : left.signum();
        LaidEnd leftEnd = new LaidEnd(left.abs(), lean);
        int turned = lean == left.signum() ? 1 : -1;
        LaidEnd rightEnd = new LaidEnd(right.abs(), -right.signum() * turned);
        at += against ? sawing.kerf(left) - sawing.slant(left) : gap(leftEnd);
        laid.add(new LaidPiece(piece.set(), piece.cut(), Sawing.mm(at), leftEnd, rightEnd));
        at += Sawing.up(piece.cut().lengthMm());
        last = rightEnd;
        lastNests = piece.nests();
    }

    private boolean liesAgainstLast(Piece piece, BigDecimal left) {
        boolean both = piece.nests() && lastNests;
        return both && left.signum() != 0 && left.abs().compareTo(last.degrees()) == 0;
    }

    /** Between two ends that do not lie against each other each slant has a cut of its own, and square ends share one. */
    private long gap(LaidEnd next) {
        long slanted = (last.lean() == 0 ? 0 : sawing.kerf(last.degrees()))
                + (next.lean() == 0 ? 0 : sawing.kerf(next.degrees()));
        boolean square = !laid.isEmpty() && (last.lean() == 0 || next.lean() == 0);
        return slanted + (square ? sawing.kerf() : 0);
    }
}

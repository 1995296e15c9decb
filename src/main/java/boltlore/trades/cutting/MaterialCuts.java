package boltlore.trades.cutting;

import boltlore.catalogue.BarStock;
import boltlore.catalogue.Material;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * All that is sawn from one material.
 *
 * @param bars remnants first, each numbered
 * @param atLeast cost that no way of cutting can be under
 * @param unused remnants that nothing is cut from
 */
public record MaterialCuts(Material material, List<SawnBar> bars, BigDecimal atLeast, List<Remnant> unused) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public BarStock stock() {
        return Objects.requireNonNull(material.bars());
    }

    /** Of the bars that are bought. */
    public BigDecimal cost() {
        return sum(bars.stream().map(SawnBar::cost));
    }

    /** Whether no way of cutting can cost less. */
    public boolean proven() {
        return cost().compareTo(atLeast) == 0;
    }

    /** How far the cost may be above the least possible, in per cent of the cost. */
    public BigDecimal gapPercent() {
        return proven() ? BigDecimal.ZERO : percent(cost().subtract(atLeast), cost());
    }

    public int pieces() {
        return bars.stream().mapToInt(bar -> bar.pieces().size()).sum();
    }

    public long bought() {
        return bars.stream().filter(SawnBar::isBought).count();
    }

    /** Share of the bars, without what is kept of them, that becomes pieces. */
    public BigDecimal usedPercent() {
        BigDecimal lengths = sum(bars.stream().map(SawnBar::lengthMm));
        return percent(
                sum(bars.stream().flatMap(bar -> bar.pieces().stream()).map(this::middleMm)),
                lengths.subtract(keptMm()));
    }

    /** Length on the middle line, which is what the piece's material comes to. */
    private BigDecimal middleMm(LaidPiece piece) {
        double slope = piece.cut().endAngles().stream()
                .mapToDouble(
                        angle -> StrictMath.tan(StrictMath.toRadians(angle.abs().doubleValue())))
                .sum();
        BigDecimal slanted = stock().acrossMm().multiply(BigDecimal.valueOf(slope / 2));
        return piece.cut().lengthMm().subtract(slanted);
    }

    public BigDecimal keptMm() {
        return sum(bars.stream().filter(SawnBar::isKept).map(SawnBar::restMm));
    }

    public BigDecimal scrapMm() {
        return sum(bars.stream().filter(bar -> !bar.isKept()).map(SawnBar::restMm));
    }

    /** What lies on the rack when all is cut: remnants that are new or were not used. */
    public Stream<Remnant> left() {
        return Stream.concat(
                unused.stream(), bars.stream().filter(SawnBar::isKept).map(this::kept));
    }

    /** What is left of the bar as a new remnant. */
    Remnant kept(SawnBar bar) {
        return new Remnant(bar.keptAs(), material.name(), bar.restMm(), bar.heat());
    }

    private static BigDecimal percent(BigDecimal part, BigDecimal whole) {
        return part.multiply(HUNDRED).divide(whole, 1, RoundingMode.HALF_UP);
    }

    private static BigDecimal sum(Stream<BigDecimal> all) {
        return all.reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}

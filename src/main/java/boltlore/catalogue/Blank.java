package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;

/**
 * The flat piece of sheet that a part is bent from: legs in a row with a bend between each two.
 *
 * @param widthMm along the bends
 * @param legsMm outside lengths, each measured to where the outer faces would meet
 * @param bendsDegrees by which it is bent between two legs, one fewer than legs
 */
public record Blank(BigDecimal widthMm, List<BigDecimal> legsMm, List<BigDecimal> bendsDegrees) {

    /** Length before bending in mm: the legs, and for each bend its allowance in the place of its two set-backs. */
    public BigDecimal developedMm(Bending bending, BigDecimal thicknessMm) {
        BigDecimal length = legsMm.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        for (BigDecimal degrees : bendsDegrees) {
            BigDecimal setBack = bending.setBackMm(degrees, thicknessMm);
            length = length.add(bending.allowanceMm(degrees, thicknessMm))
                    .subtract(setBack)
                    .subtract(setBack);
        }
        return length;
    }
}

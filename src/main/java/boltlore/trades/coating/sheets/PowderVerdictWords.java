package boltlore.trades.coating.sheets;

import boltlore.trades.coating.PowderVerdict;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Powder issued against theory, in words. */
public final class PowderVerdictWords {

    private PowderVerdictWords() {}

    /** 'usual', or what to look for. */
    public static String of(PowderVerdict verdict) {
        if (verdict.hardlyPossible()) {
            return "hardly possible: " + whole(verdict.onPartsPercent()) + " % of it would be on the parts, and with"
                    + " overspray gathered it is 65 to " + PowderVerdict.MOST_ON_PARTS_PERCENT
                    + " %; weigh again, and read the film";
        }
        if (!verdict.unusual()) {
            return "usual";
        }
        return verdict.differencePercent().signum() > 0
                ? "more than usual: look for thick film, spilt powder, guns set too high, pieces sprayed twice"
                : "less than usual: look for thin film, pieces not sprayed, areas too large in the part data";
    }

    private static BigDecimal whole(BigDecimal percent) {
        return percent.setScale(0, RoundingMode.HALF_UP);
    }
}

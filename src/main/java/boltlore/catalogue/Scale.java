package boltlore.catalogue;

import java.math.BigDecimal;

/** What an instrument can show, in its unit: from, to, and the least step that can be told apart. */
public record Scale(String unit, BigDecimal from, BigDecimal to, BigDecimal resolution) {

    public boolean shows(BigDecimal number) {
        return number.compareTo(from) >= 0 && number.compareTo(to) <= 0;
    }
}

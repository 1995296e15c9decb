package boltlore.bring;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a column of a list is. Where two words of a heading mean two of them, the one that stands first here counts. */
public enum Role {
    LINK,
    MASS,
    PACK,
    TOTAL,
    COST,
    LEAD_DAYS,
    LEVEL,
    MAKER_CODE,
    ORDER_CODE,
    QUANTITY,
    DRAWING,
    REFERENCE,
    PREFERENCE,
    REVISION,
    SUPPLIER,
    MAKER,
    PART_NUMBER,
    DESCRIPTION,
    NAME,
    GROUP,
    UNIT,
    MATERIAL,
    FINISH,
    BIN,
    NOTE,
    DATE,
    ITEM,
    /** A running number or a quantity: its values tell which. */
    NUMBER,
    /** How many, or whether, for one value of an option. */
    VALUE,
    /** A share of the quantity, by sub-assembly: the quantity is their sum. */
    SHARE,
    /** Nothing that is read. */
    LEFT;

    /** As the mapping file writes it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Role> of(String code) {
        return Arrays.stream(values()).filter(role -> role.code().equals(code)).findFirst();
    }
}

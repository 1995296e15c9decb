package boltlore.report.xlsx;

import boltlore.report.Formula;
import boltlore.report.Utf8;
import java.util.List;

/** Formulas as ECMA-376 part 1, 18.17 writes them: addresses, numbers, and four functions. */
final class FormulaText {

    private final Addresses addresses;
    private final RowSums rowSums;

    FormulaText(Addresses addresses) {
        this.addresses = addresses;
        this.rowSums = new RowSums(addresses);
    }

    Utf8 append(Utf8 xml, Formula formula, Addresses.Here here) {
        if (formula instanceof Formula.At at) {
            return addresses.append(xml, at.place(), here);
        } else if (formula instanceof Formula.Fixed fixed) {
            return xml.append(fixed.number().toPlainString());
        } else if (formula instanceof Formula.Product product) {
            return joined(xml, product.factors(), '*', here);
        } else if (formula instanceof Formula.Difference difference) {
            return joined(xml, difference.parts(), '-', here);
        } else if (formula instanceof Formula.Quotient quotient) {
            return joined(xml, quotient.parts(), '/', here);
        }
        return function(xml, formula, here);
    }

    private Utf8 function(Utf8 xml, Formula formula, Addresses.Here here) {
        if (formula instanceof Formula.Sum sum) {
            return joined(xml.append("SUM("), sum.terms(), ',', here).append(')');
        } else if (formula instanceof Formula.Rounded rounded) {
            append(xml.append("ROUND("), rounded.formula(), here);
            return xml.append(',').append(rounded.scale()).append(')');
        }
        return rowSums.append(xml, formula, here);
    }

    private Utf8 joined(Utf8 xml, List<Formula> parts, char sign, Addresses.Here here) {
        for (int i = 0; i < parts.size(); i++) {
            Formula part = parts.get(i);
            if (i > 0) {
                xml.append(sign);
            }
            if (isBare(part)) {
                append(xml, part, here);
            } else {
                append(xml.append('('), part, here).append(')');
            }
        }
        return xml;
    }

    private static boolean isBare(Formula formula) {
        return !(formula instanceof Formula.Product
                || formula instanceof Formula.Difference
                || formula instanceof Formula.Quotient
                || (formula instanceof Formula.Fixed fixed && fixed.number().signum() < 0));
    }
}

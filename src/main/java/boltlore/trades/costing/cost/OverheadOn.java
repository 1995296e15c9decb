package boltlore.trades.costing.cost;

import boltlore.catalogue.Overhead;
import boltlore.measure.Percent;
import java.math.BigDecimal;

/**
 * Overhead that is charged at a rate: so many per cent of direct labour, so many of material (job costing with a
 * predetermined overhead rate; worked example CO-01 of the check values, a job-costing exercise at transtutors.com).
 */
public final class OverheadOn {

    private OverheadOn() {}

    /** Unrounded; set-up counts as labour, and what is lost as material. */
    public static BigDecimal compute(Elements elements, Overhead overhead) {
        BigDecimal labour = elements.of(Element.LABOUR).add(elements.of(Element.SET_UP));
        BigDecimal material = elements.of(Element.MATERIAL).add(elements.of(Element.SCRAP));
        return labour.multiply(Percent.fraction(overhead.onLabourPercent()))
                .add(material.multiply(Percent.fraction(overhead.onMaterialPercent())));
    }
}

package boltlore.trades.costing.cost;

import boltlore.bill.Costs;
import boltlore.catalogue.Landing;
import boltlore.catalogue.Part;
import java.math.BigDecimal;

/**
 * A bought part with what all of it in the kit costs until it lies in the stores.
 *
 * @param issued with what is lost, in the part's unit
 * @param dutyPercent of the customs value; 0 where none is due
 */
public record LandedPart(Part part, BigDecimal issued, BigDecimal dutyPercent, Elements elements) {

    static LandedPart of(CostedItem row, Landing landing) {
        BigDecimal issued =
                Costs.toIssue(row.priced().item().quantity(), row.part().scrapPercent());
        return new LandedPart(row.part(), issued, Delivered.percent(row.part().customs(), landing), row.elements());
    }

    LandedPart plus(LandedPart other) {
        return new LandedPart(part, issued.add(other.issued), dutyPercent, elements.plus(other.elements));
    }

    /** Price, with what is lost. */
    public BigDecimal price() {
        return elements.of(Element.MATERIAL).add(elements.of(Element.SCRAP));
    }

    /** Price, freight, duty and clearance: all but coating and overhead, which arise in the workshop. */
    public BigDecimal landed() {
        return price().add(elements.of(Element.FREIGHT))
                .add(elements.of(Element.DUTY))
                .add(elements.of(Element.CLEARANCE));
    }
}

package boltlore.trades.costing.cost;

import boltlore.bill.Costs;
import boltlore.bill.Masses;
import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.MadeCost;
import boltlore.catalogue.Overhead;
import boltlore.catalogue.Part;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Source;
import boltlore.measure.Percent;
import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.util.List;

/**
 * Works out what parts cost by element. What is lost of an assembly is its own step's; its parts lose their own, as on the
 * costed bill. Every amount is rounded half-up to the minor unit where it arises, so that all
 * sums add what is printed.
 */
public final class PartCosting {

    private final Catalogue catalogue;
    private final PriceBook prices;
    private final MinorUnit unit;

    public PartCosting(Catalogue catalogue, PriceBook prices) {
        this.catalogue = catalogue;
        this.prices = prices;
        this.unit = new MinorUnit(catalogue.workshop().currency());
    }

    /** Without coating, clearance and what is inside. */
    public PartCost of(Part part, BigDecimal quantity) {
        return part.source() == Source.BUY ? bought(part, quantity) : made(part, quantity);
    }

    /** With all that is inside a made part. */
    Elements whole(Part part, BigDecimal quantity) {
        Elements own = of(part, quantity).elements();
        return part.source() == Source.BUY
                ? own
                : part.contains().stream()
                        .map(child -> whole(catalogue.part(child.part()), quantity.multiply(child.quantity())))
                        .reduce(own, Elements::plus);
    }

    private PartCost bought(Part part, BigDecimal quantity) {
        Elements price = material(part.cost(), part, quantity);
        BigDecimal massKg = Masses.eachKg(part, catalogue::part).multiply(issued(part, quantity));
        Delivered delivered = Delivered.of(
                price.total(),
                massKg,
                part.customs(),
                prices.landing().suppliers().get(supplier(part)),
                prices.landing(),
                unit);
        return new PartCost(
                List.of(),
                overhead(price).with(Element.FREIGHT, delivered.freight()).with(Element.DUTY, delivered.duty()));
    }

    private PartCost made(Part part, BigDecimal quantity) {
        BigDecimal issued = issued(part, quantity);
        int lot = prices.lots().of(part.number());
        List<Work> work = part.making().operations().stream()
                .map(operation -> Work.of(operation, prices.labour().of(operation.operation()), issued, lot, unit))
                .toList();
        Elements own = material(materialOfOne(part, prices.madeCost()), part, quantity);
        return new PartCost(work, overhead(work.stream().map(Work::elements).reduce(own, Elements::plus)));
    }

    /** Never below 0, which rounding of the cost could make it by less than a minor unit. */
    private static BigDecimal materialOfOne(Part part, MadeCost madeCost) {
        return madeCost.material(part).max(BigDecimal.ZERO);
    }

    /** What stays in the kit, and what is lost on the way: quantity to issue = needed / (1 − scrap). */
    private Elements material(BigDecimal costOfOne, Part part, BigDecimal quantity) {
        BigDecimal all = unit.round(issued(part, quantity).multiply(costOfOne));
        BigDecimal kept = unit.round(quantity.multiply(costOfOne));
        return Elements.NONE.with(Element.MATERIAL, kept).with(Element.SCRAP, all.subtract(kept));
    }

    private Elements overhead(Elements elements) {
        return elements.with(Element.OVERHEAD, unit.round(overheadOn(elements, prices.overhead())));
    }

    private static BigDecimal issued(Part part, BigDecimal quantity) {
        return Costs.toIssue(quantity, part.scrapPercent());
    }

    public static String supplier(Part part) {
        Buying buying = part.buying();
        return buying == null ? "" : buying.supplier();
    }

    /** Unrounded; set-up counts as labour, and what is lost as material. */
    static BigDecimal overheadOn(Elements elements, Overhead overhead) {
        BigDecimal labour = elements.of(Element.LABOUR).add(elements.of(Element.SET_UP));
        BigDecimal material = elements.of(Element.MATERIAL).add(elements.of(Element.SCRAP));
        return labour.multiply(Percent.fraction(overhead.onLabourPercent()))
                .add(material.multiply(Percent.fraction(overhead.onMaterialPercent())));
    }
}

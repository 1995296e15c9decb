package boltlore.trades.costing;

import boltlore.catalogue.Delivery;
import boltlore.catalogue.Duty;
import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.KitWork;
import boltlore.catalogue.LabourRates;
import boltlore.catalogue.Landing;
import boltlore.catalogue.Lots;
import boltlore.catalogue.MadeCost;
import boltlore.catalogue.OperationRate;
import boltlore.catalogue.Overhead;
import boltlore.catalogue.PartnerTerms;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.PriceStep;
import boltlore.catalogue.Profit;
import boltlore.catalogue.SellingTerms;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Terms of which a test says only what matters to it; all else costs nothing and changes nothing. */
public final class PriceBookSketch {

    private BigDecimal perHour = BigDecimal.ZERO;
    private final Map<String, OperationRate> operations = new HashMap<>();
    private MadeCost madeCost = MadeCost.MATERIAL_ONLY;
    private int lot = 1;
    private final Map<PartNumber, Integer> lots = new HashMap<>();
    private Overhead overhead = new Overhead(BigDecimal.ZERO, BigDecimal.ZERO);
    private boolean dutyOnFreight = true;
    private final List<Duty> duties = new ArrayList<>();
    private final Map<String, Delivery> deliveries = new HashMap<>();
    private KitWork kitWork = KitWork.NONE;
    private Profit profit = Profit.markUp(BigDecimal.ZERO);
    private PriceStep step = new PriceStep(new BigDecimal("0.01"), PriceStep.Way.NEAREST);
    private final Map<String, PartnerTerms> partners = new HashMap<>();
    private final List<Wording> excluded = new ArrayList<>();
    private final List<ExchangeRate> rates = new ArrayList<>();

    public PriceBookSketch labour(String anHour) {
        perHour = new BigDecimal(anHour);
        return this;
    }

    public PriceBookSketch operation(String name, String anHour, boolean outside) {
        operations.put(name, new OperationRate(name, new BigDecimal(anHour), outside));
        return this;
    }

    public PriceBookSketch costsHold(String labourPerHour, int overLot) {
        madeCost = new MadeCost(new BigDecimal(labourPerHour), overLot);
        return this;
    }

    public PriceBookSketch lot(int pieces) {
        lot = pieces;
        return this;
    }

    public PriceBookSketch lot(String part, int pieces) {
        lots.put(new PartNumber(part), pieces);
        return this;
    }

    public PriceBookSketch overhead(String onLabourPercent, String onMaterialPercent) {
        overhead = new Overhead(new BigDecimal(onLabourPercent), new BigDecimal(onMaterialPercent));
        return this;
    }

    public PriceBookSketch dutyOnPriceAlone() {
        dutyOnFreight = false;
        return this;
    }

    public PriceBookSketch duty(String hs, String origin, String percent) {
        duties.add(new Duty(hs, origin, new BigDecimal(percent), "Invented"));
        return this;
    }

    public PriceBookSketch delivery(
            String supplier, @Nullable String perKg, @Nullable String percent, String clearance, int kits) {
        deliveries.put(
                supplier, new Delivery(supplier, decimal(perKg), decimal(percent), new BigDecimal(clearance), kits));
        return this;
    }

    /** Minutes for each position, at the usual rate of an hour. */
    public PriceBookSketch assembling(String positionMin) {
        kitWork = new KitWork(new BigDecimal(positionMin), Map.of(), null);
        return this;
    }

    public PriceBookSketch markUp(String percent) {
        profit = Profit.markUp(new BigDecimal(percent));
        return this;
    }

    public PriceBookSketch margin(String percent) {
        profit = Profit.margin(new BigDecimal(percent));
        return this;
    }

    public PriceBookSketch roundedUpTo(String to) {
        step = new PriceStep(new BigDecimal(to), PriceStep.Way.UP);
        return this;
    }

    public PriceBookSketch partner(
            String name, String marginPercent, String discountPercent, @Nullable String currency) {
        Currency quoted = currency == null ? null : Currency.getInstance(currency);
        Profit own = Profit.margin(new BigDecimal(marginPercent));
        partners.put(name, new PartnerTerms(name, own, new BigDecimal(discountPercent), quoted, null, null));
        return this;
    }

    public PriceBookSketch rate(String currency, String forOne, LocalDate date, int validDays) {
        rates.add(new ExchangeRate(Currency.getInstance(currency), new BigDecimal(forOne), date, validDays));
        return this;
    }

    public PriceBookSketch excluding(Wording says) {
        excluded.add(says);
        return this;
    }

    private static @Nullable BigDecimal decimal(@Nullable String written) {
        return written == null ? null : new BigDecimal(written);
    }

    public PriceBook book() {
        return new PriceBook(
                new LabourRates(perHour, operations),
                madeCost,
                new Lots(lot, lots),
                overhead,
                kitWork,
                new Landing("IE", Set.of("IE", "PL"), dutyOnFreight, duties, deliveries),
                profit,
                step,
                partners,
                Map.of(),
                rates,
                30,
                excluded,
                Map.of(),
                SellingTerms.NONE);
    }
}

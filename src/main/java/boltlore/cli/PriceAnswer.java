package boltlore.cli;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.Part;
import boltlore.json.JsonOut;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.path.Slot;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.sheets.CostSheet;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;

/** Calculations for programs of the workshop; they hold costs. */
final class PriceAnswer {

    private static final int NEXT = 12;

    private PriceAnswer() {}

    static String json(List<PricedOrder> priced, List<Path> written) {
        return OrdersAnswer.json(priced, written, PriceAnswer::order);
    }

    private static JsonOut order(PricedOrder order) {
        Calculation calculation = order.calculation();
        FullCost cost = calculation.cost();
        return JsonOut.object()
                .put("order", order.name())
                .put("costCurrency", cost.priced().currency().getCurrencyCode())
                .put("directCost", cost.priced().totals().cost())
                .put("fullCost", cost.total())
                .put("kit", elements(cost.kit()))
                .put("extras", elements(cost.ofExtras()))
                .put("bySubSystem", bySubSystem(cost))
                .put("quotation", quotation(calculation.quotation()))
                .put("left", calculation.left().setScale(2, RoundingMode.HALF_UP))
                .put("marginLeftPercent", calculation.marginLeftPercent())
                .put("leadTime", leadTime(order.path()))
                .put("bars", CostSheet.bars(cost));
    }

    private static JsonOut elements(Elements elements) {
        JsonOut.Members members = JsonOut.object();
        for (Element element : Element.values()) {
            members.put(key(element), elements.of(element));
        }
        return members.put("total", elements.total());
    }

    /** 'ownCoating': as all keys of answers are written. */
    private static String key(Element element) {
        return switch (element) {
            case MATERIAL -> "material";
            case SCRAP -> "scrap";
            case LABOUR -> "labour";
            case SET_UP -> "setUp";
            case OWN_COATING -> "ownCoating";
            case OUTSIDE_WORK -> "outsideWork";
            case FREIGHT -> "freight";
            case DUTY -> "duty";
            case CLEARANCE -> "clearance";
            case OVERHEAD -> "overhead";
        };
    }

    private static JsonOut bySubSystem(FullCost cost) {
        return JsonOut.list(
                cost.bySubSystem().entrySet(),
                some -> JsonOut.object().put("subSystem", some.getKey()).put("cost", elements(some.getValue())));
    }

    private static JsonOut quotation(Quotation quotation) {
        JsonOut.Members answer = JsonOut.object()
                .put("on", quotation.on().toString())
                .put("validUntil", quotation.validUntil().toString())
                .put("currency", quotation.currency().getCurrencyCode());
        ExchangeRate rate = quotation.rate();
        if (rate != null) {
            answer.put("rate", rate.forOne()).put("rateOf", rate.date().toString());
        }
        return answer.put("kit", quotation.kitPrice())
                .put("discountPercent", quotation.discountPercent())
                .put("discount", quotation.discount())
                .put("beforeTax", quotation.net())
                .put("tax", quotation.taxAmount())
                .put("total", quotation.total());
    }

    private static JsonOut leadTime(LeadPath path) {
        return JsonOut.object()
                .put("days", path.days())
                .put("chain", JsonOut.list(path.chain(), PriceAnswer::slot))
                .put("first", JsonOut.list(path.first(NEXT), PriceAnswer::slot))
                .put("next", JsonOut.list(path.next(NEXT), PriceAnswer::slot));
    }

    private static JsonOut slot(Slot<Step> slot) {
        Step step = slot.activity().what();
        Part part = step.part();
        return JsonOut.object()
                .put("step", step.what())
                .putIfAny("part", part == null ? "" : part.number().text())
                .put("days", slot.activity().days())
                .put("latestStart", slot.latestStart())
                .put("slack", slot.slack());
    }
}

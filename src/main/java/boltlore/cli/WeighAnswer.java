package boltlore.cli;

import boltlore.json.JsonOut;
import boltlore.measure.Digits;
import boltlore.trades.weighing.Added;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.Check;
import boltlore.trades.weighing.Growth;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Standing;
import boltlore.trades.weighing.SubSystemLoad;
import boltlore.trades.weighing.Weighing;
import boltlore.trades.weighing.sheets.Found;
import boltlore.trades.weighing.sheets.WeighSheet;
import boltlore.trades.weighing.sheets.WeighWords;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Weighings for programs: kg and mm with three decimals at most. */
final class WeighAnswer {

    private WeighAnswer() {}

    static String json(List<WeighedOrder> weighed, List<Path> written) {
        return OrdersAnswer.json(weighed, written, WeighAnswer::order);
    }

    private static JsonOut order(WeighedOrder order) {
        Weighing weighing = order.weighing();
        JsonOut.Members answer = JsonOut.object()
                .put("order", order.name())
                .put("family", order.family().name())
                .putIfAny("era", weighing.era())
                .put("removedKg", Digits.thousandths(weighing.removedKg()))
                .put("addedKg", Digits.thousandths(weighing.addedKg()))
                .put("extrasKg", Digits.thousandths(weighing.extrasKg()))
                .put("stops", weighing.stops());
        growth(answer, weighing.growth());
        onAxles(answer, weighing);
        return answer.put("found", JsonOut.list(WeighWords.of(weighing), WeighAnswer::found));
    }

    private static JsonOut found(Found found) {
        return JsonOut.object().put("about", found.about()).put("says", found.says());
    }

    private static void growth(JsonOut.Members answer, @Nullable Growth growth) {
        if (growth != null) {
            answer.put("beforeKg", Digits.thousandths(growth.beforeKg()))
                    .put("afterKg", Digits.thousandths(growth.afterKg()))
                    .put("changePercent", Digits.thousandths(growth.changePercent()));
            if (growth.limit() != null) {
                answer.put("maxPercent", growth.limit().mostPercent()).put("aboveLimit", growth.exceeded());
            }
        }
    }

    private static void onAxles(JsonOut.Members answer, Weighing weighing) {
        OnAxles onAxles = weighing.onAxles();
        if (onAxles == null) {
            return;
        }
        int wheelbaseMm = onAxles.chassis().wheelbaseMm();
        answer.put("wheelbaseMm", wheelbaseMm)
                .put("centreBeforeMm", Digits.thousandths(onAxles.centreBeforeMm()))
                .put("centreAfterMm", Digits.thousandths(onAxles.centreAfterMm()))
                .put("sideView", WeighSheet.sideView(onAxles))
                .put("axleLoads", JsonOut.list(onAxles.standings(), WeighAnswer::standing))
                .put("aboveLimits", JsonOut.list(weighing.exceeded(), WeighAnswer::check))
                .put("subSystems", JsonOut.list(SubSystemLoad.of(weighing, wheelbaseMm), WeighAnswer::subSystem))
                .put("parts", JsonOut.list(weighing.added(), added -> part(added, wheelbaseMm)));
    }

    private static JsonOut standing(Standing standing) {
        return loads(JsonOut.object().put("stand", standing.stand()), standing.loads())
                .put("frontPercent", Digits.thousandths(standing.loads().frontPercent()));
    }

    private static JsonOut check(Check check) {
        return JsonOut.object()
                .put("stand", check.stand())
                .put("limit", check.limited())
                .put("loadKg", Digits.thousandths(check.loadKg()))
                .put("limitKg", check.limitKg())
                .put("aboveKg", Digits.thousandths(check.leftKg().negate()));
    }

    private static JsonOut subSystem(SubSystemLoad load) {
        return loads(JsonOut.object().put("subSystem", load.subSystem()), load.loads());
    }

    private static JsonOut part(Added added, int wheelbaseMm) {
        JsonOut.Members part = JsonOut.object()
                .put("part", added.item().part().number().text())
                .put("position", added.item().position().name().text());
        if (added.at() != null) {
            part.put("stationMm", added.at().behindFrontMm()).put("ownStation", added.measured());
        }
        return loads(part, added.on(wheelbaseMm));
    }

    private static JsonOut.Members loads(JsonOut.Members into, AxleLoads loads) {
        return into.put("frontKg", Digits.thousandths(loads.frontKg()))
                .put("rearKg", Digits.thousandths(loads.rearKg()))
                .put("kg", Digits.thousandths(loads.totalKg()));
    }
}

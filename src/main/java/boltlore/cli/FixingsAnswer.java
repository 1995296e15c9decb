package boltlore.cli;

import boltlore.catalogue.Fixing;
import boltlore.json.JsonOut;
import boltlore.trades.fixings.Accompanying;
import boltlore.trades.fixings.BagCount;
import boltlore.trades.fixings.BoltedJoint;
import boltlore.trades.fixings.KitFixings;
import boltlore.trades.fixings.Remarked;
import java.nio.file.Path;
import java.util.List;

/** Fixings for programs. */
final class FixingsAnswer {

    private FixingsAnswer() {}

    static String json(List<FixedOrder> listed, List<Path> written) {
        return OrdersAnswer.json(listed, written, each -> order(each.fixings()));
    }

    private static JsonOut order(KitFixings fixings) {
        return JsonOut.object()
                .put("order", fixings.bill().order().name())
                .put("stops", fixings.stops())
                .put("joints", JsonOut.list(fixings.joints(), FixingsAnswer::joint))
                .put("bags", JsonOut.list(fixings.bags(), FixingsAnswer::bag))
                .put("remarks", JsonOut.list(fixings.remarks(), FixingsAnswer::remark));
    }

    private static JsonOut joint(BoltedJoint joint) {
        JsonOut.Members answer = JsonOut.object()
                .put("joint", joint.says())
                .put("position", joint.position().name().text())
                .put("stage", joint.position().stage())
                .put("held", joint.held())
                .put("because", joint.because())
                .put("bolt", joint.bolt().number().text())
                .put("quantity", joint.quantity())
                .put("safety", joint.safety());
        return bolt(answer, joint.fixing()).put("with", JsonOut.list(joint.with(), FixingsAnswer::with));
    }

    private static JsonOut.Members bolt(JsonOut.Members answer, Fixing fixing) {
        answer.put("thread", fixing.thread())
                .putIfAny("propertyClass", fixing.propertyClass())
                .putIfAny("threadLock", fixing.threadLock());
        return fixing.torqueNm() == null || fixing.friction() == null
                ? answer
                : answer.put("torqueNm", fixing.torqueNm())
                        .putIfAny("torqueTable", fixing.torqueTable())
                        .put("friction", fixing.friction());
    }

    private static JsonOut with(Accompanying each) {
        return JsonOut.object().put("part", each.part().number().text()).put("quantity", each.quantity());
    }

    private static JsonOut bag(BagCount bag) {
        return JsonOut.object()
                .put("stage", bag.stage())
                .put("bag", bag.bag())
                .put("part", bag.part().number().text())
                .put("needed", bag.quantity())
                .put("spares", bag.spares())
                .put("eachKg", bag.eachKg())
                .put("netKg", bag.netKg())
                .put("sureByWeight", bag.sure());
    }

    private static JsonOut remark(Remarked remark) {
        return JsonOut.object()
                .put("joint", remark.joint())
                .put("verdict", remark.verdict().says())
                .put("says", remark.says());
    }
}

package boltlore.trades.cutting.json;

import boltlore.json.JsonOut;
import boltlore.trades.cutting.BlankRow;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.CutPlan.HeldBack;
import boltlore.trades.cutting.LaidPiece;
import boltlore.trades.cutting.MaterialCuts;
import boltlore.trades.cutting.Remnant;
import boltlore.trades.cutting.SawnBar;
import java.math.RoundingMode;

/** A cutting plan for programs: lengths in mm, costs in the workshop's currency. */
public final class CutPlanJson {

    private CutPlanJson() {}

    public static JsonOut.Members of(CutPlan plan) {
        return JsonOut.object()
                .put("orders", JsonOut.list(plan.orders(), order -> JsonOut.text(order.name())))
                .put("materials", JsonOut.list(plan.materials(), CutPlanJson::material))
                .put("blanks", JsonOut.list(plan.blanks(), CutPlanJson::blank))
                .put("heldBack", JsonOut.list(plan.heldBack(), CutPlanJson::heldBack))
                .put("remnantsLeft", JsonOut.list(plan.left().toList(), RemnantsJson::remnant));
    }

    private static JsonOut material(MaterialCuts cuts) {
        return JsonOut.object()
                .put("material", cuts.material().name())
                .put("pieces", cuts.pieces())
                .put("cost", cuts.cost())
                .put("atLeast", cuts.atLeast())
                .put("gapPercent", cuts.gapPercent())
                .put("proven", cuts.proven())
                .put("usedPercent", cuts.usedPercent())
                .put("bars", JsonOut.list(cuts.bars(), CutPlanJson::bar));
    }

    private static JsonOut bar(SawnBar bar) {
        Remnant remnant = bar.remnant();
        return JsonOut.object()
                .put("bar", bar.number())
                .putIfAny("remnant", remnant == null ? "" : remnant.name())
                .putIfAny("heat", bar.heat())
                .put("lengthMm", bar.lengthMm())
                .put("cost", bar.cost())
                .put("pieces", JsonOut.list(bar.pieces(), CutPlanJson::piece))
                .put("restMm", bar.restMm())
                .putIfAny("keptAs", bar.keptAs())
                .putIfAny("sameHeatAs", bar.oneHeatWith());
    }

    private static JsonOut piece(LaidPiece piece) {
        return JsonOut.object()
                .put("order", piece.set().order())
                .put("part", piece.set().part().number().text())
                .put("number", piece.set().number())
                .put("fromMm", piece.fromMm())
                .put("lengthMm", piece.cut().lengthMm())
                .put("ends", JsonOut.list(piece.cut().endAngles(), JsonOut::decimal));
    }

    private static JsonOut blank(BlankRow row) {
        return JsonOut.object()
                .put("part", row.part().number().text())
                .put("material", row.material().name())
                .put("count", row.count())
                .put("lengthMm", row.developedMm().setScale(3, RoundingMode.HALF_UP))
                .put("widthMm", row.blank().widthMm())
                .put("orders", JsonOut.texts(row.orders()));
    }

    private static JsonOut heldBack(HeldBack held) {
        return JsonOut.object()
                .put("order", held.order())
                .put("part", held.part().number().text())
                .put("count", held.count());
    }
}

package boltlore.cli;

import boltlore.catalogue.Pack;
import boltlore.json.JsonOut;
import boltlore.measure.Digits;
import boltlore.trades.charging.AcCharging;
import boltlore.trades.charging.BranchCheck;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.DcCharging;
import boltlore.trades.charging.Export;
import boltlore.trades.charging.Judgement;
import boltlore.trades.charging.Precharge;
import boltlore.trades.charging.sheets.ChargeSheet;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Charging for programs: kW, h, V, A, Ω, J and s with three decimals at most. */
final class ChargeAnswer {

    private ChargeAnswer() {}

    static String json(List<ChargedOrder> charged, List<Path> written) {
        return OrdersAnswer.json(charged, written, each -> order(each.charging()));
    }

    private static JsonOut order(Charging charging) {
        JsonOut.Members answer = JsonOut.object()
                .put("order", charging.bill().order().name())
                .put("family", charging.bill().resolved().choices().family().name())
                .put("stops", charging.stops())
                .put("alternating", JsonOut.list(charging.ac(), ChargeAnswer::way));
        direct(answer, charging);
        highVoltage(answer, charging);
        ChargeSheet.chain(charging).ifPresent(svg -> answer.put("chain", svg));
        return answer.put("branches", JsonOut.list(charging.branches(), ChargeAnswer::branch))
                .put("judgements", JsonOut.list(charging.judgements().toList(), ChargeAnswer::judgement))
                .put("missing", JsonOut.texts(charging.missing()));
    }

    private static JsonOut way(AcCharging way) {
        JsonOut.Members answer = JsonOut.object()
                .put("where", way.mains().says())
                .put("supplyPhases", way.mains().phases())
                .put("supplyVolts", Digits.thousandths(way.mains().volts()))
                .put("supplyAmps", Digits.thousandths(way.mains().amps()));
        if (way.cable() != null) {
            answer.put("cableAmps", way.cable().amps(way.mains().phases()));
        }
        return answer.put("kilowatts", Digits.thousandths(way.kilowatts()))
                .put("hours", Digits.thousandths(way.hours()))
                .put("limits", way.chain().whatLimits());
    }

    private static void direct(JsonOut.Members answer, Charging charging) {
        DcCharging dc = charging.dc();
        if (dc != null) {
            answer.put("direct", direct(dc));
        }
        Export export = charging.export();
        if (export != null) {
            answer.put("export", export(export));
        }
    }

    private static JsonOut direct(DcCharging dc) {
        return JsonOut.object()
                .put("amps", Digits.thousandths(dc.amps()))
                .put("kilowatts", Digits.thousandths(dc.kilowatts()))
                .put("hours", Digits.thousandths(dc.hours()))
                .put("limits", dc.limits());
    }

    private static JsonOut export(Export export) {
        JsonOut.Members answer = JsonOut.object()
                .put("socket", export.socket())
                .put("volts", Digits.thousandths(export.volts()))
                .put("amps", Digits.thousandths(export.amps()))
                .put("shortWatts", Digits.thousandths(export.shortWatts()))
                .put("continuousWatts", Digits.thousandths(export.continuousWatts()));
        return export.guard() == null
                ? answer
                : answer.put("residual", export.guard().residual())
                        .put("tripMilliamps", export.guard().tripMilliamps())
                        .put("withinMilliseconds", export.guard().withinMilliseconds());
    }

    private static void highVoltage(JsonOut.Members answer, Charging charging) {
        if (charging.isolationOhm() != null) {
            answer.put("isolationOhm", Digits.thousandths(charging.isolationOhm()));
        }
        Pack pack = charging.fitted().pack();
        if (pack != null) {
            answer.put("nominalVolts", Digits.thousandths(pack.nominalVolts()))
                    .put("highestVolts", Digits.thousandths(pack.highestVolts()));
            precharge(answer, charging.precharge(), pack);
        }
    }

    private static void precharge(JsonOut.Members answer, @Nullable Precharge precharge, Pack pack) {
        if (precharge != null) {
            answer.put("prechargeSeconds", Digits.thousandths(precharge.secondsToGate()))
                    .put("prechargeJoules", Digits.thousandths(precharge.joules(pack.highestVolts())));
        }
    }

    private static JsonOut branch(BranchCheck check) {
        JsonOut.Members answer = JsonOut.object()
                .put("branch", check.branch().name())
                .put("loadAmps", Digits.thousandths(check.branch().loadAmps()))
                .put("cable", check.cable().part().text())
                .put("carriesAmps", Digits.thousandths(check.carriesAmps()));
        if (check.fuse() != null) {
            answer.put("fuse", check.fuse().name())
                    .put("fuseAmps", Digits.thousandths(check.fuse().amps()));
        }
        return answer.put("verdict", check.verdict().says());
    }

    private static JsonOut judgement(Judgement judgement) {
        return JsonOut.object()
                .put("about", judgement.about())
                .put("verdict", judgement.verdict().says())
                .put("says", judgement.says());
    }
}

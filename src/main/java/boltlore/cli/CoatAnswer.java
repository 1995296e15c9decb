package boltlore.cli;

import boltlore.json.JsonOut;
import boltlore.trades.coating.ChangeOver;
import boltlore.trades.coating.LateMoves;
import boltlore.trades.coating.OrderThrough;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.PowderUse;
import boltlore.trades.coating.Round;
import boltlore.trades.coating.sheets.CoatJob;
import boltlore.trades.coating.sheets.LateWords;
import boltlore.trades.coating.sheets.PlanWords;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A coating plan as the terminal and as programs get it. */
final class CoatAnswer {

    static final String NOTHING = "No order of these can be coated, or not the late one.";

    private CoatAnswer() {}

    static void print(Screen screen, CoatJob job, Path out) {
        int orders = job.plan().orders().size();
        screen.line("Batch of " + orders + (orders == 1 ? " order" : " orders") + " written to " + out);
        screen.line(PlanWords.work(job) + ".");
        LateMoves late = job.late();
        if (late != null) {
            screen.line("Late order " + late.late().name() + ": " + LateWords.of(late));
            late.loads().forEach(move -> screen.line("  " + load(move)));
        }
        job.through().stream().filter(order -> order.late(job.start())).forEach(order -> late(screen, order, job));
    }

    private static void late(Screen screen, OrderThrough order, CoatJob job) {
        screen.line("  " + order.order().name() + " needs its pieces by " + order.needBy() + " and has them coated on "
                + order.on(job.start()) + ": tell sales.");
    }

    private static String load(LateMoves.LoadMove move) {
        String change = move.before() == null ? " is new, with " : " takes more: ";
        int more = move.morePieces();
        return "load " + move.after().number() + " (" + move.run().powder() + ")" + change + more
                + (more == 1 ? " piece" : " pieces");
    }

    static String json(CoatJob job, List<Path> written) {
        JsonOut.Members answer = JsonOut.object()
                .put("written", JsonOut.texts(written))
                .put("orders", JsonOut.list(job.through(), order -> order(order, job.start())))
                .put("rounds", JsonOut.list(job.plan().rounds(), round -> round(round, job)));
        LateMoves late = job.late();
        if (late != null) {
            answer.put("late", late(late));
        }
        return answer.written().stripTrailing();
    }

    private static JsonOut order(OrderThrough order, @Nullable LocalDate start) {
        return JsonOut.object()
                .put("order", order.order().name())
                .putIfAny("needBy", text(order.needBy()))
                .put("pieces", order.pieces())
                .put("lastLoad", order.lastLoad())
                .put("day", order.day())
                .putIfAny("coatedOn", text(order.on(start)))
                .put("late", order.late(start));
    }

    private static @Nullable String text(@Nullable LocalDate date) {
        return date == null ? null : date.toString();
    }

    private static JsonOut round(Round round, CoatJob job) {
        return JsonOut.object()
                .put("round", round.number())
                .put("leastLoads", round.leastLoads())
                .put("loads", round.loads().count())
                .put("noCheaperOrder", round.shortest())
                .put("runs", JsonOut.list(round.runs(), run -> run(run, job)));
    }

    private static JsonOut run(PowderRun run, CoatJob job) {
        PowderUse use = PowderUse.of(run, job.workshop());
        return changeOver(run.changeOver())
                .put("run", run.number())
                .put("powder", run.powder())
                .put("issueKg", use.issueKg())
                .put("overspray", use.overspray())
                .put("loads", JsonOut.list(run.loads().toList(), CoatAnswer::load));
    }

    private static JsonOut.Members changeOver(@Nullable ChangeOver change) {
        return change == null
                ? JsonOut.object()
                : JsonOut.object()
                        .put("changeOverMinutes", change.work().minutes())
                        .put("changeOverCost", change.cost());
    }

    private static JsonOut load(OvenLoad load) {
        return JsonOut.object()
                .put("load", load.number())
                .put("pieces", load.pieces())
                .put("areaM2", load.size().areaM2())
                .put("kg", load.size().kg());
    }

    private static JsonOut late(LateMoves late) {
        return JsonOut.object()
                .put("order", late.late().name())
                .put("loads", JsonOut.list(late.loads(), CoatAnswer::lateLoad))
                .put("orders", JsonOut.list(late.orders(), CoatAnswer::lateOrder))
                .put("loadsAfresh", late.loadsAfresh());
    }

    private static JsonOut lateLoad(LateMoves.LoadMove move) {
        return JsonOut.object()
                .put("load", move.after().number())
                .put("new", move.before() == null)
                .put("morePieces", move.morePieces());
    }

    private static JsonOut lateOrder(LateMoves.OrderMove move) {
        return JsonOut.object()
                .put("order", move.after().order().name())
                .put("dayBefore", dayBefore(move))
                .put("day", move.after().day());
    }

    private static int dayBefore(LateMoves.OrderMove move) {
        OrderThrough before = move.before();
        return before == null ? 0 : before.day();
    }
}

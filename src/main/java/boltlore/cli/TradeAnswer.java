package boltlore.cli;

import boltlore.answers.json.FindingJson;
import boltlore.findings.Finding;
import boltlore.json.JsonOut;
import boltlore.report.Block;
import boltlore.report.Report;
import boltlore.report.json.ReportJson;
import boltlore.report.text.TextWriter;
import boltlore.trades.FoundBy;
import java.nio.file.Path;
import java.util.List;

/** What a trade has made and found, for people and for programs. */
final class TradeAnswer {

    /**
     * Of one order, or of several together.
     *
     * @param orders their names; empty where it is of what the book holds
     */
    record OfOrder(List<String> orders, FoundBy found, List<Report> reports) {}

    private TradeAnswer() {}

    /** Orders of which nothing is made, with what stops them. */
    static List<OfOrder> stopped(KitsTogether kits) {
        return kits.stopped().stream()
                .map(kit -> new OfOrder(List.of(kit.order().name()), KitsTogether.found(kit), List.of()))
                .toList();
    }

    static void print(Screen screen, List<OfOrder> answers, Path out) {
        TextWriter text = new TextWriter(screen.width());
        for (OfOrder answer : answers) {
            for (Report report : answer.reports()) {
                for (Block block : report.glance()) {
                    screen.text(text.text(block));
                }
            }
            found(screen, answer.found());
        }
        int reports =
                answers.stream().mapToInt(answer -> answer.reports().size()).sum();
        screen.line((reports == 1 ? "1 sheet" : reports + " sheets") + " written to " + out);
    }

    /** A line for each finding, the worst first. */
    static void found(Screen screen, FoundBy found) {
        for (Finding finding : found.findings().all()) {
            screen.wrapped(
                    2,
                    finding.severity().says() + ", " + found.by() + ": "
                            + finding.kind().title("en") + ": " + finding.says());
        }
    }

    static String json(List<OfOrder> answers, List<Path> written) {
        return JsonOut.object()
                .put("written", JsonOut.texts(written))
                .put("orders", JsonOut.list(answers, TradeAnswer::order))
                .written()
                .stripTrailing();
    }

    private static JsonOut order(OfOrder answer) {
        return JsonOut.object()
                .putIfAny("order", answer.orders().size() == 1 ? answer.orders().get(0) : "")
                .putIfAny("orders", answer.orders())
                .put("stops", answer.found().findings().stops())
                .put("findings", FindingJson.encode(List.of(answer.found())))
                .put("reports", JsonOut.list(answer.reports(), ReportJson::encode));
    }
}

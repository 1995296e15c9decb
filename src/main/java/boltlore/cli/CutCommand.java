package boltlore.cli;

import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.json.RemnantsJson;
import boltlore.trades.cutting.sheets.CutSheet;
import boltlore.trades.orders.SheetFormats;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One cutting list for many orders. */
@Command(
        name = "cut",
        description = "Plan which bar gives which piece for several orders together and write their cutting list.")
final class CutCommand extends RoomCommand {

    @Mixin
    private CutOrders orders = new CutOrders();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "The folder to write; without it 'exports/cutting' here.")
    private Path out = Path.of("exports", "cutting");

    @Option(
            names = "--left",
            paramLabel = "FILE",
            description = "Write the remnants that lie on the rack when all is cut, for --remnants next time.")
    private @Nullable Path left;

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(screen, orders.kits().then(kits -> Outcome.sound(list(screen, kits))));
    }

    /** Orders that something stops are told and stay out of the list. */
    private int list(Screen screen, CutKits kits) {
        if (!json()) {
            kits.orders().stopped().forEach(kit -> KitText.print(screen, kit));
        }
        if (kits.orders().bills().isEmpty()) {
            screen.line(json() ? "{}" : "No order of these can be cut.");
            return Exit.STOPPED;
        }
        CutPlan plan = kits.plan();
        List<Fault> faults = CutFaults.of(plan);
        int issued = faults.isEmpty() ? issue(screen, kits, plan) : refused(faults, Exit.FAULTS);
        return issued == Exit.OK && !kits.orders().stopped().isEmpty() ? Exit.STOPPED : issued;
    }

    private int issue(Screen screen, CutKits kits, CutPlan plan) {
        Outcome<List<Path>> written = write(
                        out,
                        SheetFormats.of(List.of(
                                CutSheet.of(plan, kits.orders().catalogue().workshop()))))
                .then(paths -> left(plan, paths));
        if (written instanceof Outcome.Sound<List<Path>> paths) {
            screen.line(
                    json()
                            ? CutAnswer.json(plan, paths.value())
                            : CutAnswer.text(
                                    plan, kits.orders().catalogue().workshop().currency(), screen.width()));
            if (!json()) {
                screen.line("Cutting list written to " + out);
            }
            return Exit.OK;
        }
        return refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private Outcome<List<Path>> left(CutPlan plan, List<Path> sheets) {
        Path file = left;
        if (file == null) {
            return Outcome.sound(sheets);
        }
        String json = RemnantsJson.of(plan.left().toList()).written();
        return Exports.file(file, "cut --left", json.getBytes(StandardCharsets.UTF_8))
                .then(path -> {
                    List<Path> all = new ArrayList<>(sheets);
                    all.add(path);
                    return Outcome.sound(all);
                });
    }
}

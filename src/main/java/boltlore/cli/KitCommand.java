package boltlore.cli;

import boltlore.answers.json.KitJson;
import boltlore.choosing.json.SureJson;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Turns orders into kits and writes each room's sheets. */
@Command(
        name = "kit",
        description =
                "Resolve orders into kits and write their sheets: bill, contents list, picking list and coating batch.")
final class KitCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it the folder 'exports' here.")
    private Path out = Path.of("exports");

    @Option(names = "--defaults", description = "Let what is not decided take its default; defaults used are listed.")
    private boolean defaults;

    @Option(
            names = "--all",
            description = "Write the sheets for the other trades too, from the cutting list to the shipping papers.")
    private boolean all;

    @Option(
            names = "--job-cards",
            description = "Write a job card for each part that the workshop makes, with its operations, too.")
    private boolean jobCards;

    @Option(names = "--html", description = "Write each report as a page for a browser and its printer too.")
    private boolean html;

    @Option(
            names = "--certain",
            description =
                    "For an order that is not decided yet: the parts that are certain whatever is still open. Writes no sheets.")
    private boolean certain;

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(
                screen,
                orders.then((session, files) ->
                        Outcome.sound(certain ? certain(screen, session, files) : kits(screen, session, files))));
    }

    private int kits(Screen screen, CatalogueSession session, List<Path> files) {
        List<OrderOutcome> finished = new KitRun(
                        session,
                        out,
                        defaults,
                        all,
                        jobCards,
                        html,
                        json() ? KitCommand::json : KitCommand::text,
                        this::writeSets)
                .of(files, new Progress(progress(), files.size()));
        print(screen, finished);
        List<Fault> faults =
                finished.stream().flatMap(each -> each.faults().stream()).toList();
        int exit = finished.stream().mapToInt(OrderOutcome::exit).max().orElse(Exit.OK);
        return faults.isEmpty() ? exit : refused(faults, exit);
    }

    private void print(Screen screen, List<OrderOutcome> finished) {
        List<String> answers = finished.stream()
                .map(OrderOutcome::answer)
                .filter(answer -> !answer.isEmpty())
                .toList();
        if (json()) {
            JsonOut.writeList(answers, screen::text);
            screen.line("");
        } else {
            answers.forEach(screen::text);
        }
        screen.flush();
    }

    static String text(KitResult kitted) {
        StringWriter text = new StringWriter();
        Screen screen = new Screen(new PrintWriter(text));
        KitText.print(screen, kitted);
        screen.flush();
        return text.toString();
    }

    static String json(KitResult kitted) {
        return KitJson.encode(kitted.kit(), kitted.found())
                .put("sheets", JsonOut.texts(kitted.written()))
                .writtenInList();
    }

    private int certain(Screen screen, CatalogueSession session, List<Path> files) {
        List<Fault> faults = new ArrayList<>();
        Map<Path, SureText.Answer> answers = new HashMap<>();
        for (Path file : files) {
            Outcome<SureText.Answer> answer =
                    session.order(file).then(order -> Outcome.sound(SureText.Answer.of(session, order)));
            faults.addAll(answer.faults());
            if (answer instanceof Outcome.Sound<SureText.Answer> sound) {
                answers.put(file, sound.value());
            }
        }
        List<SureText.Answer> inOrder =
                files.stream().filter(answers::containsKey).map(answers::get).toList();
        if (json()) {
            screen.line(JsonOut.list(inOrder, answer -> SureJson.encode(answer.order(), answer.sure()))
                    .written()
                    .stripTrailing());
        } else {
            inOrder.forEach(answer -> SureText.print(screen, session, answer));
        }
        screen.flush();
        boolean none = inOrder.stream().anyMatch(SureText.Answer::none);
        return faults.isEmpty() ? none ? Exit.STOPPED : Exit.OK : refused(faults, Exit.FAULTS);
    }
}

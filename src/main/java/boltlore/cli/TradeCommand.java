package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.exports.Exports;
import boltlore.exports.SheetSet;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.report.Report;
import boltlore.trades.FoundBy;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeResult;
import boltlore.trades.orders.TradeFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/** The command of any trade: works on the orders, writes a folder for each, tells what was found. */
@Command
final class TradeCommand extends RoomCommand {

    private final Trade trade;

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(names = "--out", paramLabel = "FOLDER", description = "Where it is written; without it ${DEFAULT-VALUE}.")
    private Path out;

    @Option(names = "--html", description = "Write each report as a page for a browser and its printer too.")
    private boolean html;

    private CommandSpec spec = CommandSpec.create();
    private Path into = Path.of("");

    private TradeCommand(Trade trade) {
        this.trade = trade;
        this.out = Path.of("exports", trade.name());
    }

    /** The trade's command with its own options beside those that all have. */
    static CommandSpec describe(Trade trade) {
        TradeCommand command = new TradeCommand(trade);
        CommandSpec spec = CommandSpec.forAnnotatedObject(command);
        command.spec = spec;
        spec.name(trade.name()).usageMessage().description(trade.does());
        trade.options().forEach(option -> spec.addOption(typed(option)));
        return spec;
    }

    private static OptionSpec typed(TradeOption<?> option) {
        OptionSpec.Builder typed = OptionSpec.builder(option.name()).description(option.says());
        if (option.label().isEmpty()) {
            return typed.type(boolean.class).arity("0").build();
        }
        return typed.paramLabel(option.label())
                .arity("1")
                .type(option.several() ? List.class : option.order() ? Path.class : String.class)
                .auxiliaryTypes(option.order() ? Path.class : String.class)
                .build();
    }

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        Outcome<TradeOption.Given> given = given();
        if (!(given instanceof Outcome.Sound<TradeOption.Given> sound)) {
            return refused(given.faults(), Exit.USAGE);
        }
        into = out.resolve(trade.beside(sound.value()));
        return done(
                screen,
                kits(sound.value())
                        .then(kits -> worked(kits, named(sound.value(), kits))
                                .then(results -> Outcome.sound(tell(screen, kits, results)))));
    }

    /** What is wrong with any file, an option's too, is told together. */
    private Outcome<KitsTogether> kits(TradeOption.Given given) {
        List<Path> more = furtherOrders().flatMap(this::file).toList();
        return orders.then((session, files) -> {
            Outcome<KitsTogether> kits = KitsTogether.read(
                    session, Stream.concat(files.stream(), more.stream()).toList());
            List<Fault> faults = new ArrayList<>(kits.faults());
            faults.addAll(trade.faults(given, session.catalogue()));
            return faults.isEmpty() ? kits : Outcome.faulty(faults);
        });
    }

    private Stream<TradeOption<?>> furtherOrders() {
        return trade.options().stream()
                .filter(option -> option.order() && file(option).findAny().isPresent());
    }

    private Stream<Path> file(TradeOption<?> option) {
        return Stream.ofNullable(spec.findOption(option.name()).getValue());
    }

    /** The names of the orders that options give, which come after the others. */
    @SuppressWarnings("unchecked") // the value of such an option is the order's name
    private TradeOption.Given named(TradeOption.Given given, KitsTogether kits) {
        List<TradeOption<?>> options = furtherOrders().toList();
        TradeOption.Given named = given;
        for (int i = 0; i < options.size(); i++) {
            OrderKit kit = kits.kits().get(kits.kits().size() - options.size() + i);
            named = named.with((TradeOption<String>) options.get(i), kit.order().name());
        }
        return named;
    }

    private Outcome<TradeOption.Given> given() {
        Map<TradeOption<?>, List<String>> typed = new HashMap<>();
        for (TradeOption<?> option : trade.options()) {
            List<String> texts = spec.findOption(option.name()).stringValues();
            if (!texts.isEmpty()) {
                typed.put(option, texts);
            }
        }
        return TradeOption.Given.read(typed);
    }

    private Outcome<List<TradeResult>> worked(KitsTogether kits, TradeOption.Given given) {
        List<KitInWork> inWork = kits.inWork();
        return inWork.isEmpty() ? Outcome.sound(List.of()) : trade.work(inWork, kits.stoppedOrders(), given);
    }

    /** Orders that something stops are told and not worked on. */
    private int tell(Screen screen, KitsTogether kits, List<TradeResult> results) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        if (results.isEmpty()) {
            screen.line(json() ? TradeAnswer.json(TradeAnswer.stopped(kits), List.of()) : trade.nothing());
            return Exit.STOPPED;
        }
        List<Path> written = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        List<TradeAnswer.OfOrder> answers = new ArrayList<>();
        StoppedSheets stopped = new StoppedSheets(trade.name(), kits);
        for (TradeResult plain : results) {
            TradeResult result = stopped.headed(plain, order(kits, plain));
            List<Report> reports =
                    result.sheets().stream().map(sheet -> sheet.report().get()).toList();
            Outcome<List<Path>> outcome = write(of(kits, result), result, reports);
            faults.addAll(outcome.faults());
            outcome.then(paths -> Outcome.sound(written.addAll(paths)));
            answers.add(new TradeAnswer.OfOrder(of(kits, result), foundBy(kits, result), reports));
        }
        answers.addAll(json() ? TradeAnswer.stopped(kits) : List.of());
        if (!faults.isEmpty()) {
            return refused(faults, Exit.NOT_WRITTEN);
        }
        if (json()) {
            screen.line(TradeAnswer.json(answers, written));
        } else {
            TradeAnswer.print(screen, answers, into);
        }
        boolean stops =
                answers.stream().anyMatch(answer -> answer.found().findings().stops());
        return kits.stopped().isEmpty() && !stops && !stopped.any() ? Exit.OK : Exit.STOPPED;
    }

    /** The sheets, and where these are written what stands apart from them. */
    private Outcome<List<Path>> write(List<String> of, TradeResult result, List<Report> reports) {
        SheetSet set = new SheetSet(trade.name(), of, TradeFiles.write(result, reports, html), true);
        return writeSets(into.resolve(result.folder()), List.of(set))
                .then(sheets -> Outcome.all(result.apart().stream()
                                .map(apart -> Exports.file(
                                        apart.file(),
                                        apart.kind(),
                                        apart.text().get().getBytes(StandardCharsets.UTF_8),
                                        apart.carriesOver().getBytes(StandardCharsets.UTF_8)))
                                .toList())
                        .then(apart -> Outcome.sound(
                                Stream.concat(sheets.stream(), apart.stream()).toList())));
    }

    /** The name of the only order that a result is of, or empty. */
    private static String order(KitsTogether kits, TradeResult result) {
        boolean alone = result.folder().isEmpty() && kits.kits().size() == 1;
        return alone ? kits.kits().get(0).order().name() : result.folder();
    }

    /** The orders that a result is of. */
    private static List<String> of(KitsTogether kits, TradeResult result) {
        String order = order(kits, result);
        return order.isEmpty()
                ? kits.inWork().stream().map(kit -> kit.order().name()).toList()
                : List.of(order);
    }

    /** What several orders share no single one of them can waive. */
    private FoundBy foundBy(KitsTogether kits, TradeResult result) {
        String order = order(kits, result);
        return kits.inWork().stream()
                .filter(kit -> kit.order().name().equals(order))
                .findFirst()
                .map(kit -> FoundBy.of(trade.name(), result.findings(), kit.order()))
                .orElse(new FoundBy(trade.name(), result.findings()));
    }
}

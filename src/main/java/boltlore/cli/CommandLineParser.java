package boltlore.cli;

import boltlore.faults.Nearest;
import boltlore.trades.Room;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Reads what a person typed and runs the command that it names; answers with help, or with what is wrong with it. */
final class CommandLineParser {

    /** The command that every room's commands hang under; alone it says what one does first. */
    @Command(
            name = "boltlore",
            description =
                    "From an order for a bolt-in conversion kit to exactly the right parts and each room's sheets.",
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {
                "0:done, and nothing stops",
                "1:an order's choices or findings stop its sheets, coated pieces are not accepted, a test is not"
                        + " passed, a weight is above its limit, a high-voltage limit is exceeded, a bolted joint is"
                        + " wrong, a mount, a motor's speed or a coolant flow is outside what it bears, a crate may not leave as it is, or a proof found a defect",
                "2:wrong command or option",
                "3:a catalogue or order has faults",
                "4:a result could not be written",
                "5:a proof was left undecided",
                "6:the book cannot be opened, reached or written; nothing was changed",
                "7:a list leaves questions open",
                "69:Java 17 or newer not found",
                "70:internal error, or a library is missing or damaged",
                "141:the reader of the answer, such as 'head', ended before it was all printed"
            })
    static final class Root implements Runnable {

        @CommandLine.Option(
                names = {"-h", "--help"},
                usageHelp = true,
                description = "List the commands and end.")
        @SuppressWarnings("UnusedVariable") // read by the parser itself
        private boolean help;

        @CommandLine.Option(
                names = {"-V", "--version"},
                versionHelp = true,
                description = "Say which release this is and end.")
        @SuppressWarnings("UnusedVariable") // read by the parser itself
        private boolean version;

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Override
        public void run() {
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.text("Boltlore turns an order for a conversion kit into exactly the right parts and each room's"
                    + " sheets.\n\nTo begin with:\n");
            screen.wrapped(2, "boltlore kit catalog/orders/bl-1001.json", 44, "write an order's sheets");
            screen.wrapped(2, "boltlore choose pannier-van", 44, "see what can be chosen in a family, and its price");
            screen.wrapped(2, "boltlore why catalog/orders PV-CR-E", 44, "see which orders hold a part, and why");
            screen.text("\n'boltlore --help' lists all commands, 'boltlore COMMAND --help' says what one takes.\n");
            screen.flush();
        }
    }

    private CommandLineParser() {}

    static int execute(PrintWriter out, PrintWriter err, String... arguments) {
        List<Hung> named = Hung.ALL.stream()
                .filter(each -> arguments.length > 0 && each.name().equals(arguments[0]))
                .toList();
        CommandLine line = with(named.isEmpty() && arguments.length > 0 ? Hung.ALL : named);
        line.setOut(out);
        line.setErr(err);
        return line.execute(arguments);
    }

    /** All commands, for whoever lists them. */
    static CommandLine whole() {
        return with(Hung.ALL);
    }

    private static CommandLine with(List<Hung> commands) {
        CommandLine line = new CommandLine(new Root());
        line.getCommandSpec().version(Release.name());
        commands.forEach(each -> line.addSubcommand(each.name(), each.made().get()));
        line.setExpandAtFiles(false);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.registerConverter(Path.class, CommandLineParser::path);
        line.registerConverter(int.class, text -> whole(text, Integer::valueOf));
        line.registerConverter(long.class, text -> whole(text, Long::valueOf));
        line.registerConverter(BigDecimal.class, CommandLineParser::number);
        line.setUsageHelpWidth(Screen.widthOfHelp());
        line.setUsageHelpLongOptionsMaxWidth(line.getUsageHelpWidth() / 2);
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING, help -> "");
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, CommandLineParser::byRoom);
        line.setParameterExceptionHandler((wrong, words) -> wrong(wrong));
        line.setExecutionExceptionHandler((defect, command, parsed) -> Defect.told(command.getErr(), defect));
        return line;
    }

    private static <T> T whole(String text, Function<String, T> read) {
        try {
            return read.apply(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no whole number, or too large a one.");
        }
    }

    private static BigDecimal number(String written) {
        try {
            return new BigDecimal(written);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + BookOption.shortened(written) + "' is no number such as 12.50.");
        }
    }

    private static Path path(String written) {
        if (written.isBlank()) {
            throw new TypeConversionException("no name at all, as a shell leaves it of a variable that is not set");
        }
        try {
            return Path.of(written);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    "no file can have that name here. Where it is right, set LC_ALL to a UTF-8 locale");
        }
    }

    private static String byRoom(Help help) {
        StringBuilder text = new StringBuilder();
        for (Room room : Room.values()) {
            Help.TextTable table = Help.TextTable.forColumns(
                    help.colorScheme(),
                    new Help.Column(16, 2, Help.Column.Overflow.SPAN),
                    new Help.Column(help.commandSpec().usageMessage().width() - 16, 2, Help.Column.Overflow.WRAP));
            for (Hung each : Hung.ALL) {
                Help of = help.subcommands().get(each.name());
                if (each.room() == room && of != null) {
                    String[] says = of.commandSpec().usageMessage().description();
                    table.addRowValues(
                            help.colorScheme().commandText(each.name()),
                            help.colorScheme().text(String.join(" ", says)));
                }
            }
            text.append(help.createHeading("%n@|bold %s|@%n", room.says())).append(table);
        }
        return text.toString();
    }

    private static int wrong(ParameterException wrong) {
        CommandLine command = wrong.getCommandLine();
        boolean root = command.getParent() == null;
        PrintWriter err = command.getErr();
        err.println(says(command, wrong, root));
        String name = command.getCommandSpec().qualifiedName();
        err.println("'" + name + " --help' " + (root ? "lists all commands." : "says what it takes."));
        return Exit.USAGE;
    }

    private static String says(CommandLine command, ParameterException wrong, boolean root) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unknown(command, unmatched.getUnmatched().get(0), root);
        }
        String says = String.valueOf(wrong.getMessage());
        return wrong instanceof MissingParameterException missing
                        && missing.getMissing().stream().noneMatch(ArgSpec::isOption)
                ? "Missing: "
                        + missing.getMissing().stream().map(ArgSpec::paramLabel).collect(Collectors.joining(", "))
                        + ". " + command.getHelp().synopsis(0).strip()
                : says + (says.endsWith(".") ? "" : ".");
    }

    private static String unknown(CommandLine command, String word, boolean root) {
        boolean option = word.startsWith("-");
        if (!option && command.getSubcommands().isEmpty()) {
            return "One word too many: '" + word + "'.";
        }
        List<String> known = new ArrayList<>();
        if (option) {
            command.getCommandSpec().options().forEach(each -> known.addAll(List.of(each.names())));
        } else {
            known.addAll(command.getSubcommands().keySet());
        }
        String of = root ? "" : " of '" + command.getCommandSpec().qualifiedName() + "'";
        return "No " + (option ? "option '" : "command '") + word + "'" + of + "."
                + Nearest.to(word, known)
                        .map(name -> " Did you mean '" + name + "'?")
                        .orElse(option ? "" : " There are:\n" + (root ? rooms() : "  " + String.join(", ", known)));
    }

    /** A line for each room, with its commands. */
    private static String rooms() {
        return Stream.of(Room.values())
                .map(room -> room.says() + ": "
                        + Hung.ALL.stream()
                                .filter(each -> each.room() == room)
                                .map(Hung::name)
                                .collect(Collectors.joining(", ")))
                .flatMap(line -> Wrapped.rows("  " + line, Screen.widthOfHelp()).stream())
                .collect(Collectors.joining("\n"));
    }
}

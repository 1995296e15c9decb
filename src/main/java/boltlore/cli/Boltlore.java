package boltlore.cli;

import boltlore.measure.Legible;
import boltlore.trades.orders.Trades;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command that every room's commands hang under; alone it prints how it is used. */
@Command(
        name = "boltlore",
        mixinStandardHelpOptions = true,
        versionProvider = Release.class,
        subcommands = {
            KitCommand.class,
            ChooseCommand.class,
            AskCommand.class,
            OrdersCommand.class,
            WhyCommand.class,
            CompareCommand.class,
            PartsCommand.class,
            CoatCommand.class,
            FilmCommand.class,
            CutCommand.class,
            PriceCommand.class,
            ShipCommand.class,
            TestCommand.class,
            TestResultCommand.class,
            CheckCommand.class,
            ProveCommand.class
        },
        description = "From an order for a bolt-in conversion kit to exactly the right parts and each room's sheets.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done, and nothing stops",
            "1:an order's choices or findings stop its sheets, coated pieces are not accepted, a test is not"
                    + " passed, a weight is above its limit, something of the high-voltage system is too much, a bolted joint is wrong, a crate may"
                    + " not leave as it is, or a proof found a defect",
            "2:the command was called wrongly",
            "3:a catalogue or order has faults",
            "4:a result could not be written or printed",
            "5:a proof was left undecided",
            "69:no Java that is new enough",
            "70:a defect of the program itself"
        })
public final class Boltlore implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public static void main(String... arguments) {
        System.exit(run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), arguments));
    }

    /** Runs one command as the shell would and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new Boltlore());
        Trades.ALL.forEach(trade -> line.addSubcommand(trade.name(), TradeCommand.of(trade)));
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        // An argument that begins with '@' is that argument, not a file of further ones.
        line.setExpandAtFiles(false);
        line.registerConverter(Path.class, new PathGiven());
        IParameterExceptionHandler told = line.getParameterExceptionHandler();
        line.setParameterExceptionHandler((mistake, written) -> told.handleParseException(legible(mistake), written));
        line.setExecutionExceptionHandler((defect, command, parsed) -> Defect.told(command.getErr(), defect));
        int exit;
        try {
            exit = line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError tooLarge) {
            exit = Defect.told(err, tooLarge);
        }
        // A writer keeps its failures to itself until it is asked: an answer that nobody got is no success.
        if (out.checkError()) {
            err.println("The answer could not be printed: the output is closed or full.");
            exit = Exit.NOT_WRITTEN;
        }
        err.flush();
        return exit;
    }

    /** The mistake with what was written made visible; picocli finds what may have been meant by the mistake's own type. */
    private static ParameterException legible(ParameterException mistake) {
        String words = String.valueOf(mistake.getMessage());
        return Legible.lines(words).equals(words)
                ? mistake
                : new ParameterException(mistake.getCommandLine(), Legible.lines(words));
    }

    private static PrintWriter utf8(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

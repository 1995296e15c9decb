package boltlore.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command that every room's commands hang under; alone it prints how it is used. */
@Command(
        name = "boltlore",
        mixinStandardHelpOptions = true,
        versionProvider = Release.class,
        description = "From an order for a bolt-in conversion kit to exactly the right parts and each room's sheets.")
public final class Boltlore implements Runnable {

    public static void main(String... arguments) {
        System.exit(new CommandLine(new Boltlore()).execute(arguments));
    }

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }
}

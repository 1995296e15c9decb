package boltlore.cli;

import boltlore.book.Entry;
import boltlore.book.db.Reading;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A word under which several commands on the book hang; alone it lists them. */
abstract class BookGroup implements Runnable {

    @CommandLine.Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "List the commands below this word and end.")
    @SuppressWarnings("UnusedVariable") // read by the parser itself
    private boolean help;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public final void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** 'entry 12, 2026-11-30T08:15:00.000Z, Kim at desk office: order quoted – wish of the customer'. */
    static String line(Entry entry, Reading reading) {
        return "entry " + entry.number() + ", " + Entry.written(entry.stamp().at()) + ", "
                + reading.persons().shown(entry.stamp().person()) + " at "
                + entry.stamp().desk() + ": " + entry.kind()
                + (entry.reason().isEmpty() ? "" : " – " + entry.reason());
    }
}

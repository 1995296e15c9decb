package boltlore.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import picocli.CommandLine;

/** The command line for whoever writes about it: its commands with their options, and what a command says. */
public final class CommandModel {

    private CommandModel() {}

    /** All commands. */
    public static CommandLine whole() {
        return CommandLineParser.whole();
    }

    /** 'boltlore 1.2.3', as the program in the class path says it. */
    public static String release() {
        return Release.name();
    }

    /** What a person at a terminal sees of a command: its answer, and what it says beside that. */
    public static String said(List<String> words) {
        StringWriter said = new StringWriter();
        PrintWriter screen = new PrintWriter(said);
        Boltlore.run(screen, screen, words.toArray(String[]::new));
        return said.toString();
    }
}

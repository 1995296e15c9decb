package boltlore.handbook;

import boltlore.cli.CommandModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The man page of one command, in the macros that man(7) describes, from the model that its help is printed from. */
public final class ManPage {

    private final CommandSpec command;
    private final StringBuilder page = new StringBuilder();

    private ManPage(CommandLine command) {
        this.command = command.getCommandSpec();
    }

    /** Writes a page for each command and each command below one. */
    public static void writeAll(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (CommandLine each : all()) {
            Files.writeString(folder.resolve(name(each.getCommandSpec()) + ".1"), new ManPage(each).written());
        }
    }

    /** Each command, those below one after it. */
    static List<CommandLine> all() {
        List<CommandLine> all = new ArrayList<>();
        add(CommandModel.whole(), all);
        return all;
    }

    private static void add(CommandLine command, List<CommandLine> all) {
        all.add(command);
        Set<CommandLine> below = new LinkedHashSet<>(command.getSubcommands().values());
        below.forEach(each -> add(each, all));
    }

    static String name(CommandSpec command) {
        return command.qualifiedName("-");
    }

    private String written() {
        page.append(".\\\" Made from the command's own model when the program was built.\n");
        macro("TH", name(command).toUpperCase(java.util.Locale.ROOT), "1", "", CommandModel.release(), "Boltlore");
        macro("SH", "NAME");
        List<String> description = sentences(command.usageMessage().description());
        line(name(command) + " \\- "
                + text(
                        description.isEmpty()
                                ? command.name()
                                : description.get(0).replaceFirst("\\.$", "")));
        macro("SH", "SYNOPSIS");
        synopsis();
        macro("SH", "DESCRIPTION");
        description.forEach(each -> {
            macro("PP");
            line(text(each));
        });
        arguments();
        below();
        endings();
        seeAlso();
        return page.toString();
    }

    private void synopsis() {
        String whole = new Help(command, Help.defaultColorScheme(Help.Ansi.OFF))
                .synopsis(0)
                .strip();
        String name = command.qualifiedName();
        macro("B", name);
        if (whole.length() > name.length()) {
            line(text(whole.substring(name.length()).strip().replaceAll("\\s+", " ")));
        }
    }

    private void arguments() {
        List<PositionalParamSpec> words = command.positionalParameters().stream()
                .filter(each -> !each.hidden())
                .toList();
        if (!words.isEmpty()) {
            macro("SH", "ARGUMENTS");
            words.forEach(each -> entry("\\fI" + text(each.paramLabel()) + "\\fR", each));
        }
        macro("SH", "OPTIONS");
        command.options().stream().filter(each -> !each.hidden()).forEach(each -> entry(names(each), each));
    }

    private static String names(OptionSpec option) {
        String names = Arrays.stream(option.names())
                .map(each -> "\\fB" + text(each) + "\\fR")
                .collect(Collectors.joining(", "));
        return option.arity().max() == 0 ? names : names + " \\fI" + text(option.paramLabel()) + "\\fR";
    }

    private void entry(String head, ArgSpec described) {
        macro("TP");
        line(head);
        line(text(String.join(" ", sentences(described.description()))));
    }

    private void below() {
        if (!command.subcommands().isEmpty()) {
            macro("SH", "COMMANDS");
            new LinkedHashSet<>(command.subcommands().values()).forEach(each -> {
                CommandSpec spec = each.getCommandSpec();
                macro("TP");
                line("\\fB" + text(spec.name()) + "\\fR");
                line(text(String.join(" ", sentences(spec.usageMessage().description()))));
            });
        }
    }

    private void endings() {
        UsageMessageSpec ending = command.root().usageMessage();
        macro("SH", "EXIT STATUS");
        ending.exitCodeList().forEach((code, meaning) -> {
            macro("TP");
            line("\\fB" + code + "\\fR");
            line(text(meaning));
        });
    }

    private void seeAlso() {
        List<String> others = new ArrayList<>();
        if (command.parent() != null) {
            others.add(name(command.parent()));
        }
        new LinkedHashSet<>(command.subcommands().values()).forEach(each -> others.add(name(each.getCommandSpec())));
        if (!others.isEmpty()) {
            macro("SH", "SEE ALSO");
            for (int i = 0; i < others.size(); i++) {
                macro("BR", text(others.get(i)), "(1)" + (i < others.size() - 1 ? "," : ""));
            }
        }
    }

    private static List<String> sentences(String... described) {
        return Arrays.stream(described)
                .map(each -> Help.Ansi.OFF.string(each.replace("%n", " ").replace("%%", "%")))
                .flatMap(String::lines)
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
    }

    private void macro(String name, String... words) {
        page.append('.').append(name);
        for (String word : words) {
            page.append(" \"").append(word.replace("\"", "\\(dq")).append('"');
        }
        page.append('\n');
    }

    private void line(String text) {
        page.append(text.startsWith(".") || text.startsWith("'") ? "\\&" + text : text)
                .append('\n');
    }

    /** Plain text with what the formatter would take for itself written so that it prints. */
    static String text(String plain) {
        StringBuilder written = new StringBuilder();
        plain.codePoints().forEach(letter -> {
            switch (letter) {
                case '\\' -> written.append("\\(rs");
                case '-' -> written.append("\\-");
                case '\'' -> written.append("\\(aq");
                case '"' -> written.append("\\(dq");
                default -> written.append(letter < 128 ? Character.toString(letter) : "\\[u%04X]".formatted(letter));
            }
        });
        return written.toString();
    }
}

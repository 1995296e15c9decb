package boltlore.handbook;

import boltlore.cli.CommandModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * A command in the text with what it answers: a block of code headed 'shown', or 'shown 3-12' where only those lines of the
 * answer stand in the text. Here they are run, so that the text shows what the demo gives today.
 */
final class Shown {

    private static final Pattern BLOCK =
            Pattern.compile("(?m)^```shown(?: (\\d+)-(\\d+))?\\n\\$ ([^\\n]+)\\n(.*?)^```$", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private final Path folder;

    /** @param folder of their own for the sheets and the book of the commands that are shown */
    Shown(Path folder) {
        this.folder = folder;
    }

    /** The text with each answer as it is today. */
    String renewed(String markdown) {
        return BLOCK.matcher(markdown).replaceAll(block -> Matcher.quoteReplacement(renewed(block)));
    }

    static int in(String markdown) {
        return (int) BLOCK.matcher(markdown).results().count();
    }

    private String renewed(MatchResult block) {
        String head = block.group().substring(0, block.group().indexOf('\n'));
        List<String> lines = answer(block.group(3)).lines().toList();
        int first = block.group(1) == null ? 1 : Integer.parseInt(block.group(1));
        int last = block.group(2) == null ? lines.size() : Integer.parseInt(block.group(2));
        List<String> text = new ArrayList<>(List.of(head, "$ " + block.group(3)));
        if (first > 1) {
            text.add("…");
        }
        text.addAll(lines.subList(Math.min(first - 1, lines.size()), Math.min(last, lines.size())));
        if (last < lines.size()) {
            text.add("…");
        }
        text.add("```");
        return String.join("\n", text);
    }

    private String answer(String typed) {
        List<String> words =
                new ArrayList<>(words(typed).subList(1, words(typed).size()));
        CommandLine command = command(words);
        for (Map.Entry<String, Path> apart : Map.of(
                        "--out", folder.resolve("exports"), "--book", folder.resolve("book.db"))
                .entrySet()) {
            if (command.getCommandSpec().findOption(apart.getKey()) != null && !words.contains(apart.getKey())) {
                words.addAll(List.of(apart.getKey(), apart.getValue().toString()));
            }
        }
        if (words.contains("--book") && !words.contains("--by")) {
            words.addAll(List.of("--by", "Ada"));
        }
        return CommandModel.said(words).replace(folder + "/", "");
    }

    /** The command that words name, through its group where it has one. */
    static CommandLine command(List<String> words) {
        CommandLine command = CommandModel.whole();
        for (String word : words) {
            CommandLine below = command.getSubcommands().get(word);
            if (below == null) {
                break;
            }
            command = below;
        }
        return command;
    }

    /** A line as a shell takes it apart, as far as the text needs it. */
    static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .toList();
    }

    /** Renews the sources of the handbook where they lie. */
    public static void main(String... none) throws IOException {
        Path folder = Files.createDirectories(Path.of("target/handbook"));
        try (Stream<Path> pages = Files.list(Handbook.SOURCES)) {
            for (Path page :
                    pages.filter(each -> each.toString().endsWith(".md")).toList()) {
                Files.writeString(page, new Shown(folder).renewed(Files.readString(page)));
            }
        }
    }
}

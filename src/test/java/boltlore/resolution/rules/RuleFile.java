package boltlore.resolution.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A file of rules as text. */
record RuleFile(Path path, String text) {

    private static final Pattern RULE = Pattern.compile(
            "^rule \"([^\"]*)\"(?: @\\w+\\(\\w+\\))?\\R(?:@Propagation\\(EAGER\\)\\R)?(when\\R.*?)^then\\R(.*?)^end$",
            Pattern.DOTALL | Pattern.MULTILINE);

    record Rule(String name, String when, String then) {}

    static List<RuleFile> all() {
        try (Stream<Path> files = Files.list(Path.of("rules"))) {
            return files.filter(path -> path.toString().endsWith(".drl"))
                    .sorted()
                    .map(RuleFile::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RuleFile read(Path path) {
        try {
            return new RuleFile(path, Files.readString(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Rule> rules() {
        return RULE.matcher(text).results().map(RuleFile::rule).toList();
    }

    /** All names that follow the word 'rule', whether or not the rest is written as it should be. */
    List<String> ruleNames() {
        return Pattern.compile("(?m)^\\s*rule\\s+\"?([^\"\\n]*)\"?")
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    private static Rule rule(MatchResult found) {
        return new Rule(found.group(1), found.group(2), found.group(3));
    }

    @Override
    public String toString() {
        return path.getFileName().toString();
    }
}

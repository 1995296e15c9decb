package boltlore.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Follows the launcher for Windows where there is no Windows: the few constructs of its command language that the launcher
 * is written in, after the help texts of cmd ('if /?', 'for /?', 'set /?', 'call /?'; from memory). A line in any other
 * form is refused, so that the launcher cannot grow beyond what is tested.
 */
final class BatchFile {

    /**
     * @param code with which it ended
     * @param said on the error stream
     * @param started the command lines of programs, in order
     */
    record Run(int code, String said, List<String> started) {}

    private static final Pattern SET = Pattern.compile("set \"(\\w+)=(.*)\"");
    private static final Pattern IF = Pattern.compile(
            "if (not )?(defined (\\w+)|exist \"([^\"]*)\"|errorlevel (\\d+)|\"([^\"]*)\"==\"([^\"]*)\") (.*)");
    private static final Pattern FOR = Pattern.compile("for %%(\\w) in \\(([^)]*)\\) do (.*)");
    private static final Pattern ECHO = Pattern.compile("echo (.*) 1>&2");
    private static final Pattern EXIT = Pattern.compile("exit /b (\\d+)");
    private static final Pattern VARIABLE = Pattern.compile("%(\\w+)%");

    private final List<String> lines;
    private final String folder;
    private final Predicate<String> exists;
    private final Predicate<String> starts;
    private final Map<String, String> variables = new HashMap<>();
    private final StringBuilder said = new StringBuilder();
    private final List<String> started = new ArrayList<>();
    private int level;
    private Integer ended;

    /**
     * @param folder that the launcher lies in, as %~dp0 says it
     * @param exists whether a file lies at that path
     * @param starts whether a command line is started without an error
     */
    BatchFile(Path file, String folder, Predicate<String> exists, Predicate<String> starts) throws IOException {
        this.lines = Files.readAllLines(file);
        this.folder = folder;
        this.exists = exists;
        this.starts = starts;
    }

    Run run(Map<String, String> environment, String... arguments) {
        variables.putAll(environment);
        for (int i = 0; i < lines.size() && ended == null; i++) {
            String line = lines.get(i).strip();
            if (line.endsWith("(")) {
                int end = i + 1;
                while (!lines.get(end).equals(")")) {
                    end++;
                }
                if (holds(line + " :")) {
                    lines.subList(i + 1, end).forEach(each -> follow(each.strip(), arguments));
                }
                i = end;
            } else {
                follow(line, arguments);
            }
        }
        return new Run(ended == null ? level : ended, said.toString(), List.copyOf(started));
    }

    private void follow(String line, String... arguments) {
        if (ended != null || line.equals("@echo off") || line.equals("setlocal") || line.startsWith("rem ")) {
            return;
        }
        Matcher loop = FOR.matcher(line);
        if (loop.matches()) {
            for (String each : loop.group(2).split(" ", -1)) {
                follow(loop.group(3).replace("%%" + loop.group(1), each), arguments);
            }
            return;
        }
        plain(expanded(line, arguments), arguments);
    }

    private void plain(String line, String... arguments) {
        Matcher set = SET.matcher(line);
        Matcher echo = ECHO.matcher(line);
        Matcher exit = EXIT.matcher(line);
        Matcher condition = IF.matcher(line);
        if (set.matches()) {
            variables.put(set.group(1).toLowerCase(Locale.ROOT), set.group(2));
        } else if (echo.matches()) {
            said.append(echo.group(1)).append('\n');
        } else if (exit.matches()) {
            ended = Integer.valueOf(exit.group(1));
        } else if (condition.matches()) {
            if (holds(line)) {
                plain(condition.group(8), arguments);
            }
        } else if (line.startsWith("\"")) {
            String command = line.replace(" >nul 2>&1", "");
            started.add(command);
            level = starts.test(command) ? 0 : 1;
        } else {
            throw new IllegalArgumentException("A construct that is not tested: " + line);
        }
    }

    private boolean holds(String line) {
        Matcher condition = IF.matcher(line);
        if (!condition.matches()) {
            throw new IllegalArgumentException("A condition that is not tested: " + line);
        }
        boolean holds;
        if (condition.group(3) != null) {
            holds = !value(condition.group(3)).isEmpty();
        } else if (condition.group(4) != null) {
            holds = exists.test(expanded(condition.group(4)));
        } else if (condition.group(5) != null) {
            holds = level >= Integer.parseInt(condition.group(5));
        } else {
            holds = condition.group(6).equals(condition.group(7));
        }
        return holds == (condition.group(1) == null);
    }

    private String value(String name) {
        return variables.entrySet().stream()
                .filter(each -> each.getKey().equalsIgnoreCase(name))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
    }

    private String expanded(String line, String... arguments) {
        String first = arguments.length == 0 ? "" : arguments[0];
        String text = line.replace("%~dp0", folder)
                .replace("%~1", first)
                .replace("%*", String.join(" ", arguments))
                .replace("%errorlevel%", String.valueOf(level));
        return VARIABLE.matcher(text).replaceAll(each -> Matcher.quoteReplacement(value(each.group(1))));
    }
}

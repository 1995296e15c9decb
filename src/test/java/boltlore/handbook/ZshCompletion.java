package boltlore.handbook;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Completion for zsh: commands with what they are for, options with what they mean, values where they are known. */
public final class ZshCompletion {

    private final StringBuilder script = new StringBuilder("#compdef boltlore\n");

    private ZshCompletion() {}

    public static String of(CommandLine root) {
        ZshCompletion completion = new ZshCompletion();
        completion.function(root.getCommandSpec());
        completion.script.append("\n_boltlore \"$@\"\n");
        return completion.script.toString();
    }

    private void function(CommandSpec command) {
        Set<CommandLine> below = new LinkedHashSet<>(command.subcommands().values());
        script.append("\n").append(functionName(command)).append("() {\n");
        List<String> arguments = Stream.concat(
                        command.options().stream()
                                .filter(option -> !option.hidden())
                                .flatMap(ZshCompletion::options),
                        below.isEmpty()
                                ? command.positionalParameters().stream().map(ZshCompletion::word)
                                : Stream.of("'1:command:->command'", "'*::argument:->argument'"))
                .toList();
        script.append(below.isEmpty() ? "" : "    local context state state_descr line\n    typeset -A opt_args\n");
        script.append("    _arguments ").append(below.isEmpty() ? "-s" : "-s -C");
        arguments.forEach(each -> script.append(" \\\n        ").append(each));
        script.append('\n');
        if (!below.isEmpty()) {
            dispatch(below);
        }
        script.append("}\n");
        below.forEach(each -> function(each.getCommandSpec()));
    }

    private void dispatch(Set<CommandLine> below) {
        script.append("    case $state in\n    command)\n        local -a commands=(\n");
        below.forEach(each -> script.append("            ")
                .append(quoted(each.getCommandName() + ":"
                        + said(each.getCommandSpec().usageMessage().description())))
                .append('\n'));
        script.append("        )\n        _describe command commands\n        ;;\n");
        script.append("    argument)\n        case $line[1] in\n");
        below.forEach(each -> script.append(
                "        %s) %s ;;\n".formatted(each.getCommandName(), functionName(each.getCommandSpec()))));
        script.append("        esac\n        ;;\n    esac\n");
    }

    private static String functionName(CommandSpec command) {
        return "_" + command.qualifiedName("_").replace('-', '_');
    }

    private static Stream<String> options(OptionSpec option) {
        String value = option.arity().max() == 0 ? "" : ":" + plain(option.paramLabel()) + ":" + values(option);
        String often = option.isMultiValue() ? "*" : "";
        return Arrays.stream(option.names())
                .map(name -> quoted(often + name + "[" + plain(said(option.description())) + "]" + value));
    }

    private static String word(PositionalParamSpec word) {
        String label = plain(word.paramLabel()) + ":" + values(word);
        return quoted((word.index().max() == Integer.MAX_VALUE ? "*:" : ":") + label);
    }

    private static String values(ArgSpec value) {
        Class<?> type = value.auxiliaryTypes().length > 0 ? value.auxiliaryTypes()[0] : value.type();
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .map(each -> each.toString().toLowerCase(java.util.Locale.ROOT))
                    .collect(Collectors.joining(" ", "(", ")"));
        }
        return java.nio.file.Path.class.isAssignableFrom(type)
                        || value.paramLabel().contains("ORDER")
                ? "_files"
                : " ";
    }

    private static String said(String... description) {
        return description.length == 0 ? "" : description[0].replace("%n", " ").replace("%%", "%");
    }

    /** Without the marks that the shell's own notation is made of. */
    private static String plain(String text) {
        return text.replace("\\", "").replace("[", "(").replace("]", ")").replace(":", "\\:");
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }
}

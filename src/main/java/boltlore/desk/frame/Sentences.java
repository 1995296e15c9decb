package boltlore.desk.frame;

import boltlore.faults.Fault;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Faults in the words of a page. */
public final class Sentences {

    /** On a page nobody types commands: advice that names one is left to the terminal. */
    private static final Pattern COMMAND = Pattern.compile("'boltlore |(?<!\\w)--\\w");

    private Sentences() {}

    public static List<String> of(List<Fault> faults) {
        return faults.stream().map(Sentences::of).toList();
    }

    /** Of what was asked for by its name and is not there. */
    public static String missing(List<Fault> faults) {
        return faults.stream().map(Sentences::missing).distinct().collect(Collectors.joining(" "));
    }

    /** 'There is no order 'BL-9' in this book.' */
    private static String missing(Fault fault) {
        return fault.found().startsWith("the ") && fault.expected().endsWith("of the book")
                ? "There is no " + fault.found().substring("the ".length()) + " in this book."
                : of(fault);
    }

    static String of(Fault fault) {
        String file = fault.file().startsWith(Typed.FIELD) ? "" : fault.file();
        String place = String.join(" ", List.of(file, fault.place())).strip();
        StringBuilder words = new StringBuilder(place.isEmpty() ? "" : place + ": ");
        words.append("found ").append(fault.found());
        if (!fault.expected().isEmpty()) {
            words.append("; expected ").append(fault.expected());
        }
        boolean told =
                !fault.advice().isEmpty() && !COMMAND.matcher(fault.advice()).find();
        if (told) {
            words.append(". ").append(fault.advice());
        }
        words.setCharAt(0, Character.toUpperCase(words.charAt(0)));
        return words.append(words.toString().endsWith(".") || words.toString().endsWith("?") ? "" : ".")
                .toString();
    }

    static String of(HttpResponseException answer) {
        return switch (answer.getStatus()) {
            case 404 ->
                "No page of this desk has that address. Look whether it was typed as it should be; the rooms above lead on.";
            case 413 -> "The form was too large; nothing was changed.";
            default -> "The request was not understood; nothing was changed.";
        };
    }
}

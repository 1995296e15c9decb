package boltlore.cli;

import boltlore.bring.Brought;
import boltlore.bring.Doubt;
import boltlore.bring.Mapping;
import boltlore.json.JsonOut;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** What was read from a spreadsheet, for people and for programs. */
record BroughtText(Screen screen, Path kept) {

    void print(Brought brought) {
        screen.heading(brought.file());
        screen.line(brought.rows() + " rows name parts.");
        for (Mapping.Tabled table : brought.mapping().tables()) {
            String columns = table.columns().stream()
                    .filter(use -> !use.is().code().equals("left"))
                    .map(use -> use.column() + " " + use.is().code()
                            + (use.value().isEmpty() ? "" : " '" + use.value() + "' of '" + use.option() + "'"))
                    .collect(Collectors.joining(", "));
            screen.wrapped(0, "Table at " + table.head() + (table.read() ? ": " + columns : ": left out") + ".");
        }
        list("Left out:", brought.left());
        list(
                "To be known:",
                brought.notes().stream()
                        .map(note -> note.at() + ": " + note.says())
                        .toList());
        List<String> open = brought.mapping().open();
        list(open.isEmpty() ? "" : "Open questions: " + open.size(), open);
        screen.wrapped(
                0,
                open.isEmpty()
                        ? "No question is open. What each column and row is taken for stands in " + kept + "."
                        : "Answer in " + kept
                                + ": put the answer in the place of '?', and take 'asked' away from a column"
                                + " that is right. Then run this again.");
    }

    private void list(String head, List<String> sentences) {
        if (!sentences.isEmpty()) {
            screen.line(head);
            sentences.forEach(sentence -> screen.wrapped(2, sentence));
        }
    }

    static JsonOut json(Brought brought) {
        return JsonOut.object()
                .put("file", brought.file())
                .put("rows", brought.rows())
                .put("open", JsonOut.texts(brought.mapping().open()))
                .put("notes", JsonOut.list(brought.notes(), BroughtText::json))
                .put("left", JsonOut.texts(brought.left()));
    }

    private static JsonOut json(Doubt note) {
        return JsonOut.object().put("at", note.at()).put("says", note.says());
    }
}

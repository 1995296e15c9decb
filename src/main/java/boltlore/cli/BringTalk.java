package boltlore.cli;

import boltlore.bring.Brought;
import boltlore.bring.Known;
import boltlore.bring.Mapping;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Asks in the terminal what is open in a mapping, one question at a time; an empty answer puts a question off. */
record BringTalk(Screen screen, BufferedReader in, Path file, Outcome<Known> into) {

    Brought ask(Brought brought) {
        Dialogue talk = new Dialogue(screen, in);
        screen.wrapped(
                0,
                "Answer with what is asked for; 'yes' takes what is likely, 'leave out' leaves a row or table out, Enter puts"
                        + " the question off.");
        Set<String> put = new HashSet<>();
        Brought now = brought;
        for (Optional<Mapping.Open> next = next(now, put); next.isPresent(); next = next(now, put)) {
            put.add(next.get().at());
            screen.wrapped(0, next.get().at() + ": " + next.get().asks());
            String likely = next.get().likely();
            Optional<String> answer = talk.ask(likely.isEmpty() ? ">" : "[yes = " + likely + "] >");
            if (answer.isEmpty()) {
                return now;
            }
            if (!answer.get().isEmpty()) {
                now = again(now, now.mapping().answered(next.get(), answer.get()));
            }
        }
        return now;
    }

    private static Optional<Mapping.Open> next(Brought now, Set<String> put) {
        return now.mapping().questions().stream()
                .filter(open -> !put.contains(open.at()))
                .findFirst();
    }

    /** Reads the file anew, for an answer may lead to other questions. */
    private Brought again(Brought before, Mapping mapping) {
        Outcome<Brought> read = into.then(known -> BringCommand.bytes(file)
                .then(bytes -> Brought.read(file.toString(), bytes, mapping, mapping.family(), known)));
        return read instanceof Outcome.Sound<Brought> sound ? sound.value() : before;
    }
}

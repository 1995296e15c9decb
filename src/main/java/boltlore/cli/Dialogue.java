package boltlore.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;

/** Asks on the screen and reads a line of answer. */
record Dialogue(Screen screen, BufferedReader in) {

    /** The answer without blanks around it; empty where the input has ended. */
    Optional<String> ask(String prompt) {
        screen.prompt(prompt + " ");
        try {
            String line = in.readLine();
            if (line == null) {
                screen.line("");
            }
            return Optional.ofNullable(line).map(String::strip);
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}

package boltlore.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** A command that has run: what it printed on both streams, and its exit code. */
record Ran(String out, String err, int exit) {

    static Ran boltlore(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int exit = Boltlore.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Ran(out.toString(), err.toString(), exit);
    }

    /** Both streams and the exit code, for the message of a failing test. */
    @Override
    public String toString() {
        return "exit " + exit + "\n--- out\n" + out + "--- err\n" + err;
    }
}

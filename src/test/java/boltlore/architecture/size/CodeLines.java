package boltlore.architecture.size;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which lines of a Java source hold code: neither blank nor only comment. */
final class CodeLines {

    // A loop over single characters, unlike one over alternatives, takes no stack for each of a long text block.
    private static final Pattern TOKEN = Pattern.compile(
            "\"\"\"[^\\\\]*?(?:\\\\.[^\\\\]*?)*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"|'(?:\\\\.|[^'\\\\\n])*'|//[^\n]*|/\\*.*?\\*/|\\S",
            Pattern.DOTALL);

    private final BitSet withCode = new BitSet();

    CodeLines(String source) {
        Matcher token = TOKEN.matcher(source);
        int line = 1;
        int counted = 0;
        while (token.find()) {
            line += newlines(source, counted, token.start());
            int last = line + newlines(source, token.start(), token.end());
            if (!token.group().startsWith("//") && !token.group().startsWith("/*")) {
                withCode.set(line, last + 1);
            }
            line = last;
            counted = token.end();
        }
    }

    int all() {
        return withCode.cardinality();
    }

    /** Lines with code from one line to another, both counted from 1 and both included. */
    int between(int first, int last) {
        return withCode.get(first, last + 1).cardinality();
    }

    private static int newlines(String source, int from, int to) {
        return (int) source.substring(from, to).chars().filter(c -> c == '\n').count();
    }
}

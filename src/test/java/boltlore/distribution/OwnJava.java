package boltlore.distribution;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** A Java of the image's own: only the modules that its libraries use, for machines that have none. */
public final class OwnJava {

    /**
     * What no class names but is found at run time: elliptic curves for a server's TLS, the character sets that a
     * workshop's old spreadsheets are written in, and the tools with which a running program is looked at.
     */
    private static final List<String> FOUND_AT_RUN_TIME = List.of("jdk.crypto.ec", "jdk.charsets", "jdk.jcmd");

    private OwnJava() {}

    /** Makes a Java for the libraries in the folder that the first word names, in the folder that the second names. */
    public static void main(String... folders) throws IOException {
        Path own = Path.of(folders[1]);
        if (Files.exists(own)) {
            try (Stream<Path> old = Files.walk(own)) {
                for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        run(
                "jlink",
                List.of(
                        "--add-modules",
                        String.join(",", modules(Path.of(folders[0]))),
                        "--strip-java-debug-attributes",
                        "--no-header-files",
                        "--no-man-pages",
                        // Its code would come in another order each time.
                        "--disable-plugin",
                        "system-modules",
                        "--output",
                        own.toString()));
    }

    /** The modules that jdeps finds in use, with those that are found at run time only. */
    static List<String> modules(Path libraries) {
        List<String> words = List.of(
                "--multi-release",
                "17",
                "--ignore-missing-deps",
                "--print-module-deps",
                "--recursive",
                "--class-path",
                libraries + "/*",
                libraries.resolve("boltlore.jar").toString());
        TreeSet<String> modules = new TreeSet<>(FOUND_AT_RUN_TIME);
        modules.addAll(List.of(run("jdeps", words).strip().split(",", -1)));
        return List.copyOf(modules);
    }

    private static String run(String tool, List<String> words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = ToolProvider.findFirst(tool)
                .orElseThrow(() -> new IllegalStateException("This Java has no " + tool + "; build with a whole JDK."))
                .run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
        if (exit != 0) {
            throw new IllegalStateException(tool + " ended with " + exit + ": " + out + err);
        }
        return out.toString();
    }
}

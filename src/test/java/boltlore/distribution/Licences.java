package boltlore.distribution;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The texts of licences and notices that the libraries carry, each under the name of its library. */
final class Licences {

    private static final Pattern TEXT = Pattern.compile(
            "(META-INF/|about_files/)?(LICEN[CS]E|NOTICE|COPYING|about)[^/]*(\\.(txt|md|html))?|META-INF/licenses?/[^/]+");

    private Licences() {}

    /** Copies the texts of each library into a folder of its own; those without any are named in THIRD-PARTY.txt alone. */
    static void collect(Path libraries, Path folder) throws IOException {
        try (Stream<Path> jars = Files.list(libraries)) {
            for (Path jar : jars.filter(each -> each.toString().endsWith(".jar"))
                    .sorted()
                    .toList()) {
                collectOf(jar, folder.resolve(jar.getFileName().toString().replace(".jar", "")));
            }
        }
    }

    private static void collectOf(Path jar, Path folder) throws IOException {
        try (JarFile open = new JarFile(jar.toFile())) {
            List<JarEntry> texts = open.stream()
                    .filter(entry -> !entry.isDirectory() && !entry.getName().endsWith(".class"))
                    .filter(entry -> TEXT.matcher(entry.getName()).matches())
                    .toList();
            for (JarEntry text : texts) {
                String name = text.getName()
                        .substring(text.getName().lastIndexOf('/') + 1)
                        .toLowerCase(Locale.ROOT);
                Files.write(
                        Files.createDirectories(folder).resolve(name),
                        open.getInputStream(text).readAllBytes());
            }
        }
    }
}

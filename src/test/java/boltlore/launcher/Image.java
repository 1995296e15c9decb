package boltlore.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.jar.Attributes.Name;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** An image as the build makes it, with the stand-in for the program. */
record Image(Path home) {

    record Run(int code, String out, String err) {}

    static Image in(Path home) throws IOException {
        Path launcher = Files.createDirectories(home.resolve("bin")).resolve("boltlore");
        Files.copy(Path.of("src/main/launcher/boltlore"), launcher);
        if (!launcher.toFile().setExecutable(true)) {
            throw new IOException("cannot make " + launcher + " executable");
        }
        Path jar = Files.createDirectories(home.resolve("lib")).resolve("boltlore.jar");
        writeJar(jar);
        Files.writeString(home.resolve("lib/sizes"), "boltlore.jar " + Files.size(jar) + "\n");
        List<String> classes =
                new ArrayList<>(Files.readAllLines(Path.of(System.getProperty("java.home"), "lib/classlist")));
        classes.add(StandIn.class.getName().replace('.', '/'));
        Files.write(home.resolve("lib/classes"), classes);
        return new Image(home);
    }

    private static void writeJar(Path jar) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Name.MAIN_CLASS, StandIn.class.getName());
        String entry = StandIn.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                InputStream code = StandIn.class.getResourceAsStream("/" + entry)) {
            out.putNextEntry(new JarEntry(entry));
            Objects.requireNonNull(code).transferTo(out);
        }
    }

    Path launcher() {
        return home.resolve("bin/boltlore");
    }

    /** Where the launcher keeps what it makes for one user. */
    Path cache() {
        return home.resolveSibling("cache");
    }

    /** The archive that belongs to the image, as the build makes it. */
    Path madeArchive() throws IOException, InterruptedException {
        assertThat(run(Map.of("BOLTLORE_ARCHIVE", "make"))).isEqualTo(new Run(0, "", ""));
        List<Path> made = in(home.resolve("archive"), ".jsa");
        assertThat(made).hasSize(1);
        return made.get(0);
    }

    /** What lies in the user's cache once nothing is being made any more. */
    List<Path> cached() throws IOException, InterruptedException {
        Path own = cache().resolve("boltlore");
        Thread.sleep(200);
        for (int tries = 0; tries < 300 && !in(own, ".making").isEmpty(); tries++) {
            Thread.sleep(100);
        }
        return in(own, "");
    }

    private static List<Path> in(Path folder, String ending) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    Run run(String... arguments) throws IOException, InterruptedException {
        return run(Map.of(), arguments);
    }

    Run run(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        return finish(start(environment, arguments));
    }

    Process start(Map<String, String> environment, String... arguments) throws IOException {
        return start(launcher(), environment, arguments);
    }

    Process start(Path launcher, Map<String, String> environment, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("XDG_CACHE_HOME", cache().toString());
        builder.environment().putAll(environment);
        return builder.start();
    }

    static Run finish(Process process) throws IOException, InterruptedException {
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Run(process.waitFor(), out, err);
    }
}

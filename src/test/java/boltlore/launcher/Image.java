package boltlore.launcher;

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
        writeJar(Files.createDirectories(home.resolve("lib")).resolve("boltlore.jar"));
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

    Path cache() {
        return home.resolve("cache");
    }

    List<Path> archives() throws IOException {
        if (!Files.isDirectory(cache())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(cache())) {
            return files.sorted().toList();
        }
    }

    Run run(String... arguments) throws IOException, InterruptedException {
        return run(Map.of(), arguments);
    }

    Run run(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        return finish(start(launcher(), environment, arguments));
    }

    static Process start(Path launcher, Map<String, String> environment, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
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

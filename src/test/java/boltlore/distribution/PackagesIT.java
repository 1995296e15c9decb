package boltlore.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The finished packages, each unpacked or installed where no other Boltlore is, and run on the demo that it brings. */
class PackagesIT {

    private static final Path TARGET = Path.of("target").toAbsolutePath();
    private static final Path LIBRARIES = TARGET.resolve("boltlore/lib");
    private static final Path LICENCES = TARGET.resolve("boltlore/licences");
    private static final String VERSION = System.getProperty("boltlore.version");
    private static final String ORDER = "catalog/orders/bl-1002.json";

    @TempDir
    private Path folder;

    /** What launcher and packages call; no Java is among it. */
    private static final List<String> TOOLS = List.of(
            "sh",
            "readlink",
            "cat",
            "stat",
            "cksum",
            "mkdir",
            "find",
            "df",
            "awk",
            "rm",
            "mv",
            "stty",
            "tar",
            "gzip",
            "dpkg",
            "dpkg-deb",
            "dpkg-split",
            "diff");

    /** A folder of them. */
    private Path tools;

    @BeforeEach
    void lay_out_tools() throws IOException {
        tools = Files.createDirectories(folder.resolve("tools"));
        for (String tool : TOOLS) {
            Path there = Path.of("/usr/bin", tool);
            if (Files.exists(there)) {
                Files.createSymbolicLink(tools.resolve(tool), there.toRealPath());
            }
        }
    }

    @Test
    void with_its_own_Java_it_needs_none_and_writes_the_same_sheets() throws Exception {
        Path own = unpacked("own-java");
        Path any = unpacked("any-java");

        assertThat(run(own, Map.of(), "bin/boltlore", "--version").out()).isEqualTo("boltlore " + VERSION + "\n");
        assertThat(run(own, Map.of(), "bin/boltlore", "kit", ORDER, "--all").code())
                .isLessThan(2);
        assertThat(run(any, Map.of("JAVA_HOME", System.getProperty("java.home")), "bin/boltlore", "kit", ORDER, "--all")
                        .code())
                .isLessThan(2);
        assertThat(sheets(own)).hasSizeGreaterThan(20).isEqualTo(sheets(any));
    }

    @Test
    void without_any_Java_it_says_so() throws Exception {
        assertThat(run(unpacked("any-java"), Map.of(), "bin/boltlore", "--version"))
                .isEqualTo(new Ended(
                        69, "", "boltlore: Java is missing. Install Java 17 or newer, or set JAVA_HOME to it.\n"));
    }

    @Test
    void its_own_Java_has_the_modules_that_its_libraries_use_and_no_more() throws Exception {
        List<String> modules = run(unpacked("own-java"), Map.of(), "java/bin/java", "--list-modules")
                .out()
                .lines()
                .map(each -> each.replaceFirst("@.*", ""))
                .toList();

        assertThat(modules).containsAll(OwnJava.modules(LIBRARIES)).doesNotContain("jdk.compiler", "jdk.jshell");
    }

    /** With dpkg's own rules, in a root where nothing else is; scripts run beside it, as there is no shell in it. */
    @Test
    void Debian_s_package_installs_runs_and_leaves_nothing() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/dpkg")) && "root".equals(System.getProperty("user.name")));
        Path root = Files.createDirectories(folder.resolve("root"));
        Files.createDirectories(root.resolve("var/lib/dpkg/info"));
        Files.createDirectories(root.resolve("var/lib/dpkg/updates"));
        Files.createFile(root.resolve("var/lib/dpkg/status"));
        List<String> dpkg = List.of(
                "dpkg",
                "--root=" + root,
                "--force-depends",
                "--force-script-chrootless",
                "--force-not-root",
                "--log=/dev/null");
        Path deb = TARGET.resolve("boltlore_" + VERSION + "_all.deb");

        assertThat(run(root, home(), words(dpkg, "--install", deb.toString())).code())
                .isZero();
        Ended asked = run(root, home(), "usr/bin/boltlore", "--version");
        assertThat(asked).isEqualTo(new Ended(0, "boltlore " + VERSION + "\n", ""));
        assertThat(run(
                                root.resolve("usr/share/doc/boltlore/examples"),
                                home(),
                                root + "/usr/bin/boltlore",
                                "kit",
                                ORDER,
                                "--out",
                                folder + "/out")
                        .code())
                .isLessThan(2);
        assertThat(root.resolve("usr/share/man/man1/boltlore-kit.1")).exists();
        assertThat(run(root, home(), words(dpkg, "--purge", "boltlore")).code()).isZero();
        assertThat(root.resolve("usr")).doesNotExist();
    }

    @Test
    void the_archive_for_Windows_holds_its_launcher_in_its_own_line_ends() throws Exception {
        try (ZipFile zip = new ZipFile(
                TARGET.resolve("boltlore-" + VERSION + "-windows.zip").toFile())) {
            Set<String> names = zip.stream().map(ZipEntry::getName).collect(Collectors.toSet());
            String home = "boltlore-" + VERSION + "/";
            String launcher = new String(
                    zip.getInputStream(zip.getEntry(home + "bin/boltlore.bat")).readAllBytes(), StandardCharsets.UTF_8);

            assertThat(names)
                    .contains(home + "lib/boltlore.jar", home + "docs/tour.html", home + ORDER)
                    .doesNotContain(home + "bin/boltlore");
            assertThat(launcher.replace("\r\n", "")).doesNotContain("\n");
            assertThat(zip.stream().map(ZipEntry::getLastModifiedTime).distinct())
                    .hasSize(1);
        }
    }

    @Test
    void each_library_has_its_licence_told() throws IOException {
        String told = Files.readString(LICENCES.resolve("THIRD-PARTY.txt"));

        assertThat(libraries().keySet())
                .allSatisfy(name -> assertThat(told).contains(":" + name.replaceFirst("-([0-9][^-]*)$", ":$1") + " "));
    }

    @Test
    void the_bill_of_software_holds_each_library_with_its_checksum_and_licence() throws Exception {
        JsonNode bill = new ObjectMapper().readTree(Files.readString(LICENCES.resolve("libraries.cdx.json")));
        Map<String, String> billed = new TreeMap<>();
        for (JsonNode component : bill.path("components")) {
            assertThat(component.path("licenses"))
                    .as(component.path("name").asText())
                    .isNotEmpty();
            for (JsonNode hash : component.path("hashes")) {
                if (hash.path("alg").asText().equals("SHA-256")) {
                    billed.put(
                            component.path("name").asText() + "-"
                                    + component.path("version").asText(),
                            hash.path("content").asText());
                }
            }
        }

        assertThat(bill.path("bomFormat").asText()).isEqualTo("CycloneDX");
        assertThat(billed).isEqualTo(libraries());
    }

    @Test
    void the_containerfile_is_made_of_what_the_build_leaves() throws IOException {
        List<String> lines = Files.readString(TARGET.resolve("Containerfile"))
                .replace("\\\n", " ")
                .lines()
                .filter(each -> !each.startsWith("#") && !each.isBlank())
                .toList();
        List<String> known = List.of("FROM", "COPY", "RUN", "USER", "WORKDIR", "ENTRYPOINT", "CMD");

        assertThat(lines).allMatch(line -> known.contains(line.split(" ", -1)[0]));
        assertThat(lines.get(0)).matches("FROM debian:\\S+-slim");
        assertThat(lines)
                .filteredOn(line -> line.startsWith("USER"))
                .doesNotContain("USER root")
                .isNotEmpty();
        String copied = lines.stream()
                .filter(line -> line.startsWith("COPY"))
                .findFirst()
                .orElseThrow()
                .split(" ", -1)[1];
        try (Stream<Path> files = Files.list(TARGET)) {
            assertThat(files.filter(each -> each.getFileSystem()
                            .getPathMatcher("glob:" + copied)
                            .matches(each.getFileName())))
                    .hasSize(1);
        }
    }

    private record Ended(int code, String out, String err) {}

    private Ended run(Path in, Map<String, String> environment, String... command)
            throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(command));
        if (words.get(0).contains("/") && !words.get(0).startsWith("/")) {
            words.set(0, in.resolve(words.get(0)).toString());
        }
        ProcessBuilder builder = new ProcessBuilder(words).directory(in.toFile());
        builder.redirectError(folder.resolve("err").toFile());
        builder.environment().clear();
        builder.environment()
                .putAll(Map.of(
                        "PATH", tools + ":/usr/sbin:/sbin", "HOME", folder.toString(), "BOLTLORE_ARCHIVE", "off"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), out, Files.readString(folder.resolve("err")));
    }

    private static Map<String, String> home() {
        return Map.of("JAVA_HOME", System.getProperty("java.home"), "BOLTLORE_ARCHIVE", "");
    }

    private static String[] words(List<String> begin, String... more) {
        return Stream.concat(begin.stream(), Stream.of(more)).toArray(String[]::new);
    }

    private Path unpacked(String kind) throws Exception {
        Path archive = TARGET.resolve("boltlore-" + VERSION + "-" + kind + ".tar.gz");
        Path to = Files.createDirectories(folder.resolve(kind));
        assertThat(run(to, Map.of(), "tar", "xzf", archive.toString()).code()).isZero();
        return to.resolve("boltlore-" + VERSION);
    }

    /** The sheets as data, in which no time of writing stands. */
    private static Map<String, String> sheets(Path home) throws IOException {
        Map<String, String> sheets = new TreeMap<>();
        try (Stream<Path> files = Files.walk(home.resolve("exports"))) {
            for (Path file : files.filter(each -> each.toString().matches(".*\\.(csv|json)"))
                    .toList()) {
                if (!file.endsWith("written.json")) {
                    sheets.put(home.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return sheets;
    }

    /** The image's libraries but our own, with the SHA-256 of each. */
    private static Map<String, String> libraries() throws IOException {
        Map<String, String> sums = new TreeMap<>();
        try (Stream<Path> jars = Files.list(LIBRARIES)) {
            for (Path jar :
                    jars.filter(each -> each.toString().endsWith(".jar")).toList()) {
                sums.put(jar.getFileName().toString().replace(".jar", ""), sum(jar));
            }
        }
        sums.remove("boltlore");
        return sums;
    }

    private static String sum(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}

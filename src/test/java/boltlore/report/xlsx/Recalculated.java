package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * Workbooks as LibreOffice works them out: told to recalculate every formula when it opens a file, it saves what it
 * comes to.
 */
public final class Recalculated {

    private static final String MISSING =
            "LibreOffice (soffice) is missing, and with it the check of the sheets' formulas."
                    + " Install it: on Debian, apt-get install libreoffice-calc.";

    /** Setting 0 of 'recalculation on file load': always. */
    private static final String ALWAYS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
            <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
            </oor:items>
            """;

    private Recalculated() {}

    /** File name to recalculated file, for the files of a folder. */
    public static Map<String, byte[]> all(Path folder) throws IOException, InterruptedException {
        Path profile = folder.resolve("profile");
        Files.createDirectories(profile.resolve("user"));
        Files.writeString(profile.resolve("user/registrymodifications.xcu"), ALWAYS);
        Path done = Files.createDirectories(folder.resolve("done"));
        List<String> command = List.of(
                "soffice",
                "--headless",
                "-env:UserInstallation=" + profile.toUri(),
                "--convert-to",
                "xlsx:Calc MS Excel 2007 XML",
                "--outdir",
                done.toString());
        try (var files = Files.list(folder)) {
            List<String> sheets = files.filter(file -> file.toString().endsWith(".xlsx"))
                    .map(Path::toString)
                    .sorted()
                    .toList();
            run(
                    java.util.stream.Stream.concat(command.stream(), sheets.stream())
                            .toList(),
                    folder);
        }
        Map<String, byte[]> recalculated = new TreeMap<>();
        try (var files = Files.list(done)) {
            files.forEach(file -> recalculated.put(file.getFileName().toString(), bytes(file)));
        }
        return recalculated;
    }

    private static void run(List<String> command, Path folder) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("soffice.log").toFile())
                    .start();
            assertThat(process.waitFor(3, TimeUnit.MINUTES)).as("soffice ended").isTrue();
            assertThat(process.exitValue()).as("soffice's exit code").isZero();
        } catch (IOException e) {
            throw new AssertionError(MISSING, e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

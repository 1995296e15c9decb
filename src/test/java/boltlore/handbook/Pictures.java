package boltlore.handbook;

import boltlore.cli.CommandModel;
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
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Pictures of five sheets of the demo, as LibreOffice prints them. What stands on a sheet as data is kept with its picture
 * as a hash, so that a test can say which picture is stale without drawing it.
 */
final class Pictures {

    /** What a picture shows: a page of a sheet. */
    private static final Map<String, Integer> PAGES = new TreeMap<>(Map.of(
            "bill", 1,
            "picking-list", 1,
            "powder-coat-batch", 6,
            "cutting-list", 2,
            "weight-statement", 1));

    static final Path KEPT = Handbook.SOURCES.resolve("pictures.txt");
    /** Each edit of the catalogue has another; that alone makes no picture stale. */
    private static final Pattern WITHOUT_REVISION = Pattern.compile("\\b[0-9a-f]{12}\\b");

    private static final String ORDER = "BL-1001";

    private Pictures() {}

    /** Draws them anew: {@code mvn -q test-compile exec:exec@pictures}. */
    public static void main(String... none) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(Path.of("target/handbook/pictures"));
        Path sheets = written(folder);
        List<String> call =
                new ArrayList<>(List.of("soffice", "--headless", "--convert-to", "pdf", "--outdir", folder.toString()));
        PAGES.keySet().forEach(sheet -> call.add(sheets.resolve(sheet + ".xlsx").toString()));
        run(call);
        for (Map.Entry<String, Integer> page : PAGES.entrySet()) {
            String number = page.getValue().toString();
            run(List.of(
                    "pdftoppm",
                    "-png",
                    "-r",
                    "62",
                    "-f",
                    number,
                    "-l",
                    number,
                    "-singlefile",
                    folder.resolve(page.getKey() + ".pdf").toString(),
                    Handbook.SOURCES.resolve(page.getKey()).toString()));
        }
        Files.write(KEPT, sums(sheets));
    }

    /** The demo order's sheets in that folder. */
    static Path written(Path folder) {
        CommandModel.said(List.of("kit", "catalog/orders/bl-1001.json", "--all", "--out", folder.toString()));
        return folder.resolve(ORDER);
    }

    /** Of each sheet that is shown: its name, and a hash of all that stands on it as data. */
    static List<String> sums(Path sheets) throws IOException {
        List<String> sums = new ArrayList<>();
        for (String sheet : PAGES.keySet()) {
            MessageDigest sum = sha256();
            try (Stream<Path> tables = Files.list(sheets.resolve("csv"))) {
                for (Path table : tables.filter(
                                each -> each.getFileName().toString().startsWith(sheet))
                        .sorted()
                        .toList()) {
                    sum.update(table.getFileName().toString().getBytes(StandardCharsets.UTF_8));
                    sum.update(WITHOUT_REVISION
                            .matcher(Files.readString(table))
                            .replaceAll("")
                            .getBytes(StandardCharsets.UTF_8));
                }
            }
            sums.add(sheet + " " + HexFormat.of().formatHex(sum.digest()));
        }
        return sums;
    }

    private static void run(List<String> command) throws IOException, InterruptedException {
        if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
            throw new IOException("failed: " + command);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}

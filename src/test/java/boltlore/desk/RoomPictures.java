package boltlore.desk;

import boltlore.book.By;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.desk.frame.Access;
import boltlore.desk.frame.Server;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/**
 * Pictures of a page of each room, as a browser shows the demo on one day. What the page says is kept with its picture as a
 * hash, so that a test can say which picture is stale without drawing it.
 */
final class RoomPictures {

    /** What a picture shows. */
    static final Map<String, String> PAGES = new TreeMap<>(Map.of(
            "room-sales", "/sales/order/BL-1005?ask=drive-unit",
            "room-stores", "/stores/pick?order=BL-1001&all=yes",
            "room-fabrication", "/fabrication",
            "room-bench", "/bench/test/BL-1001",
            "room-engineering", "/engineering?words=pump",
            "room-office", "/office"));

    static final Path FOLDER = Path.of("src/doc");
    static final Path KEPT = FOLDER.resolve("rooms.txt");

    private static final int WIDE = 900;
    private static final int HIGH = 640;
    private static final int SHADES = 16;

    /** Of each browser and each catalogue anew: that alone makes no picture stale. */
    private static final Pattern ANEW = Pattern.compile("name=\"(token|once)\" value=\"[^\"]*\"|\\b[0-9a-f]{64}\\b");

    private RoomPictures() {}

    /** Draws them anew: {@code mvn -q test-compile exec:exec@rooms}. */
    public static void main(String... none) throws IOException {
        Path folder = Files.createTempDirectory("boltlore-pictures");
        List<String> sums = new ArrayList<>();
        at(folder, server -> {
            try (BrowserContext context = Browsers.chromium()
                    .newContext(new Browser.NewContextOptions()
                            .setViewportSize(WIDE, HIGH)
                            .setColorScheme(ColorScheme.LIGHT))) {
                Page page = context.newPage();
                PAGES.forEach((name, path) -> {
                    page.navigate(server.address().resolve(path).toString());
                    write(page.screenshot(), FOLDER.resolve(name + ".png"));
                    sums.add(sum(
                            name,
                            page.request()
                                    .get(server.address().resolve(path).toString())
                                    .text()));
                });
            }
        });
        Files.write(KEPT, sums);
        System.exit(0);
    }

    /** What is done at the desk of the demo, on a day on which its orders are in time. */
    static void at(Path folder, java.util.function.Consumer<Server> work) throws IOException {
        Path catalogue = Path.of("catalog");
        Bench bench = Bench.of(sound(CatalogueReader.read(catalogue)), catalogue);
        StringWriter log = new StringWriter();
        try (Book book = sound(Book.openOrBegin(new Place.InFile(folder.resolve("book.db"))))) {
            sound(new DemoBook(book, bench, RoomPictures::by).fill());
            try (Server server = new Server(
                    Desk.rooms(new Workshop(bench, book)),
                    Access.here(0),
                    RoomPictures::by,
                    new PrintWriter(log, true))) {
                work.accept(server);
            }
        }
    }

    private static By by() {
        return new By(Instant.parse("2026-05-18T08:00:00Z"), LocalDate.of(2026, 5, 18), "front desk", "Kim Aster");
    }

    /** Name and hash of what a page says. */
    static String sum(String name, String html) {
        try {
            byte[] said = ANEW.matcher(html).replaceAll("").getBytes(StandardCharsets.UTF_8);
            return name + " "
                    + HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(said));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    /** In sixteen shades: a page of a job card has few colours, and the README is quick to load. */
    private static void write(byte[] picture, Path file) {
        byte[] shades = new byte[SHADES];
        IntStream.range(0, SHADES).forEach(i -> shades[i] = (byte) (i * 255 / (SHADES - 1)));
        try {
            BufferedImage full = ImageIO.read(new ByteArrayInputStream(picture));
            BufferedImage small = new BufferedImage(
                    full.getWidth(),
                    full.getHeight(),
                    BufferedImage.TYPE_BYTE_BINARY,
                    new IndexColorModel(4, SHADES, shades, shades, shades));
            Graphics2D pen = small.createGraphics();
            pen.drawImage(full, 0, 0, null);
            pen.dispose();
            ImageIO.write(small, "png", file.toFile());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new IllegalStateException(outcome.faults().toString());
    }
}

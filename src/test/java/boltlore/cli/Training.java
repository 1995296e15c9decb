package boltlore.cli;

import boltlore.book.By;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.desk.Desk;
import boltlore.desk.frame.Access;
import boltlore.desk.frame.Server;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.trades.orders.Trades;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.AutoComplete;

/**
 * What the build does once with a finished image: it runs the commands on the demo catalogue while Java writes down the
 * classes in use, from which the launcher makes its archive, and leaves the libraries' sizes and the shell's completion.
 */
public final class Training {

    private static final String ORDERS = "catalog/orders";
    private static final String ORDER = ORDERS + "/bl-1001.json";

    private Training() {}

    /** Trains on the image in the folder that the first word names. */
    public static void main(String... image) throws IOException {
        Locale.setDefault(Locale.ROOT);
        Path home = Path.of(image[0]);
        Path out = Files.createTempDirectory("boltlore");
        try {
            System.setIn(new ByteArrayInputStream("\n\n".getBytes(StandardCharsets.UTF_8)));
            for (List<Object> command : commands(out)) {
                int exit = Boltlore.run(nowhere(), nowhere(), strings(command));
                if (exit > Exit.STOPPED && exit != Exit.UNDECIDED) {
                    throw new IllegalStateException("exit " + exit + " of " + command);
                }
            }
            desk(out.resolve("book.db"));
        } finally {
            delete(out);
        }
        Files.write(home.resolve("lib/sizes"), sizes(home.resolve("lib")));
        Path completion = Files.createDirectories(home.resolve("completion")).resolve("boltlore.bash");
        Files.writeString(completion, AutoComplete.bash("boltlore", CommandLineParser.whole()));
    }

    /** A book's way, each command after those that it needs. */
    private static List<List<Object>> ofBook(Path out) {
        List<Object> at = List.of("--book", out.resolve("book.db"), "--by", "Training");
        return Stream.of(
                        List.<Object>of("order", "draft", ORDER),
                        List.<Object>of("order", "quote", "BL-1001"),
                        List.<Object>of("order", "confirm", "BL-1001"),
                        List.<Object>of("order", "sheets", "BL-1001", "--out", out.resolve("frozen")),
                        List.<Object>of("order", "list"),
                        List.<Object>of("order", "show", "BL-1001"),
                        List.<Object>of("built", "fit", "BL-1001", "--part", "CH-11X", "--serial", "1"),
                        List.<Object>of("built", "show", "BL-1001"),
                        List.<Object>of("change", "list", "BL-1001"),
                        List.<Object>of("recall", "--serial", "1"),
                        List.<Object>of("person", "list"),
                        List.<Object>of("stock", "short"),
                        List.<Object>of("stock", "short", "--json"),
                        List.<Object>of("purchase", "place"),
                        List.<Object>of("purchase", "list"),
                        List.<Object>of("stock", "receive", "PV-CR-L", "1", "--serial", "1"),
                        List.<Object>of("stock", "list"),
                        List.<Object>of("pick", "list", "BL-1001"),
                        List.<Object>of("coating", "queue", "BL-1001"),
                        List.<Object>of("coating", "list"),
                        List.<Object>of("rack", "list"),
                        List.<Object>of("record", "list", "BL-1001"),
                        List.<Object>of("book", "check"))
                .map(words -> Stream.concat(words.stream(), at.stream()).toList())
                .toList();
    }

    /** The first pages of the desk, at the book that is there by now. */
    private static void desk(Path file) throws IOException {
        Path folder = Path.of("catalog");
        By by = new By(Instant.now(), LocalDate.now(ZoneId.systemDefault()), "training", "Training");
        if (!(CatalogueReader.read(folder) instanceof Outcome.Sound<Catalogue> catalogue)
                || !(Book.open(new Place.InFile(file)) instanceof Outcome.Sound<Book> opened)) {
            throw new IllegalStateException("No catalogue or no book to train the desk on");
        }
        try (Book book = opened.value();
                Server server = Desk.open(
                        new Workshop(Bench.of(catalogue.value(), folder), book), Access.here(0), () -> by, nowhere())) {
            for (String page : List.of("/sales", "/sales/new", "/sales/order/BL-1001", "/stores", "/office")) {
                try (InputStream in = server.address().resolve(page).toURL().openStream()) {
                    if (in.readAllBytes().length == 0) {
                        throw new IllegalStateException("Nothing at " + page);
                    }
                }
            }
        }
    }

    private static List<List<Object>> commands(Path out) {
        List<List<Object>> commands = new ArrayList<>(named(out));
        commands.addAll(ofBook(out));
        Trades.ALL.stream()
                .filter(trade -> commands.stream().noneMatch(command -> command.contains(trade.name())))
                .<List<Object>>map(trade -> List.of(trade.name(), ORDER, "--out", out.resolve(trade.name())))
                .forEach(commands::add);
        return commands;
    }

    /** Those that are no trade's, and trades that are asked in a way of their own. */
    private static List<List<Object>> named(Path out) {
        Path record = out.resolve("testing/BL-1001");
        return List.of(
                List.of("--version"),
                List.of(),
                List.of("--help"),
                List.of("kit", "--help"),
                List.of("families"),
                List.of("parts"),
                List.of("parts", "cowl"),
                List.of("choose", "pannier-van"),
                List.of("choose", "pannier-van", "--cheapest", "--json"),
                List.of("ask", "stook-pickup"),
                List.of("kit", ORDERS, "--out", out.resolve("plain")),
                List.of("kit", ORDER, "--out", out.resolve("all"), "--all", "--json"),
                List.of("compare", ORDER, ORDERS + "/bl-1002.json"),
                List.of("price", ORDER, "--out", out.resolve("pricing")),
                List.of("why", ORDER, "PV-CR-E"),
                List.of("why", ORDERS, "PV-CR-E", "--json"),
                List.of("cut", ORDER, "--out", out.resolve("cutting")),
                List.of("coat", ORDER, "--out", out.resolve("coating")),
                List.of("buy", ORDER, "--out", out.resolve("buying")),
                List.of("fixings", ORDER, "--out", out.resolve("fixings")),
                List.of("test", ORDER, "--out", out.resolve("testing")),
                List.of(
                        "test-result",
                        record.resolve("csv/end-of-line-test-record.csv"),
                        "--out",
                        out.resolve("judged")),
                List.of("ship", ORDER, "--out", out.resolve("shipping")),
                List.of("new", "workshop", out.resolve("shed")),
                List.of("new", "family", "cart", "--catalogue", out.resolve("shed")),
                List.of("parts-list", "--catalogue", out.resolve("shed"), "--out", out.resolve("lists")),
                List.of("bring", out.resolve("lists/cart-lines.xlsx"), "--onto", out.resolve("shed")),
                List.of("check"),
                List.of("orders", "stook-pickup"),
                List.of("prove", "stook-pickup"),
                List.of("axle-loads", ORDER, "--out", out.resolve("loads")),
                List.of("driving", ORDER, "--out", out.resolve("driving")),
                List.of("braking", ORDER, "--out", out.resolve("braking")),
                List.of("cooling", ORDER, "--out", out.resolve("cooling")),
                List.of("mounting", ORDER, "--out", out.resolve("mounting")));
    }

    private static String[] strings(List<Object> words) {
        return words.stream().map(Object::toString).toArray(String[]::new);
    }

    private static PrintWriter nowhere() {
        return new PrintWriter(Writer.nullWriter());
    }

    private static List<String> sizes(Path libraries) throws IOException {
        List<String> sizes = new ArrayList<>();
        try (Stream<Path> files = Files.list(libraries)) {
            for (Path file : files.sorted().toList()) {
                if (file.toString().endsWith(".jar")) {
                    sizes.add(file.getFileName() + " " + Files.size(file));
                }
            }
        }
        return sizes;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}

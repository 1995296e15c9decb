package boltlore.desk;

import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * So many people at one desk for so long, each with a browser's cookies and some seconds of thought between two pages.
 * {@code DeskLoad BOOK PEOPLE SECONDS THOUGHT_MS IMAGE}; the desk is the command of that image, as its users start it, in a
 * process of its own; the book is one that {@code boltlore.book.db.Scale} has filled, and the
 * demo's orders are taken down beside its own. Prints the time of each kind of page, errors and memory.
 */
public final class DeskLoad {

    private static final int PART = 5000;
    private static final int OWED = 2000;
    private static final int QUIET = 20;
    private static final Pattern FIELD = Pattern.compile("name=\"(token|once|seen|option)\" value=\"([^\"]*)\"");
    private static final Pattern ADDRESS = Pattern.compile("http://\\S+");
    private static final Pattern KIB = Pattern.compile("(VmRSS|VmHWM):\\s*(\\d+) kB");
    private static final Pattern VALUE =
            Pattern.compile("class=\"answer\" type=\"submit\" name=\"value\" value=\"([^\"]*)\"");

    private final URI desk;
    private final long until;
    private final int thoughtMs;
    private final Map<String, List<Long>> times = new ConcurrentSkipListMap<>();
    private final Map<String, Integer> errors = new ConcurrentSkipListMap<>();

    private DeskLoad(URI desk, int seconds, int thoughtMs) {
        this.desk = desk;
        this.until = System.nanoTime() + seconds * 1_000_000_000L;
        this.thoughtMs = thoughtMs;
    }

    public static void main(String... words) throws IOException, InterruptedException {
        fill(sound(Place.of(words[0], Map.of())));
        Process process = new ProcessBuilder(words[4] + "/bin/boltlore", "desk", "--port", "0", "--book", words[0])
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
            Matcher address = ADDRESS.matcher(Objects.requireNonNullElse(said.readLine(), ""));
            if (!address.find()) {
                throw new IllegalStateException("The desk did not open");
            }
            URI desk = URI.create(address.group());
            DeskLoad load = new DeskLoad(desk, Integer.parseInt(words[2]), Integer.parseInt(words[3]));
            load.run(Integer.parseInt(words[1]));
            load.print();
            quiet(process, desk);
            memory(process);
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    private static void fill(Place place) {
        Path folder = Path.of("catalog");
        Bench bench = Bench.of(sound(CatalogueReader.read(folder)), folder);
        try (Book book = sound(Book.openOrBegin(place))) {
            if (book.read(reading -> reading.orders().find("BL-1001")).isEmpty()) {
                sound(new DemoBook(book, bench, OpenDesk::by).fill());
            }
            new OwedOrders(book, OpenDesk::by).promise(Integer.getInteger("boltlore.owed", OWED));
        }
    }

    /** All that the desk's process holds, as Linux says it, without the people, who are in this one. */
    private static void memory(Process process) throws IOException {
        Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
        if (Files.isReadable(status)) {
            Map<String, Long> kib = Files.readAllLines(status).stream()
                    .map(KIB::matcher)
                    .filter(Matcher::matches)
                    .collect(Collectors.toMap(line -> line.group(1), line -> Long.valueOf(line.group(2))));
            System.out.printf(
                    Locale.ROOT,
                    "memory of the desk's process at the end %d MB, at most %d MB%n",
                    kib.get("VmRSS") * 1024 / 1_000_000,
                    kib.get("VmHWM") * 1024 / 1_000_000);
        }
    }

    private void run(int people) throws InterruptedException {
        List<Thread> all = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            Random random = new Random(person);
            int number = person;
            Thread thread = new Thread(() -> person(random, number), "person " + person);
            all.add(thread);
            thread.start();
        }
        for (Thread thread : all) {
            thread.join();
        }
    }

    private void person(Random random, int number) {
        HttpClient client =
                HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        String order = "L-" + Long.toString(System.nanoTime(), 36).toUpperCase(Locale.ROOT) + "-" + number;
        try {
            while (System.nanoTime() < until) {
                if (number % 4 == 0) {
                    sell(client, order + "-" + random.nextInt(1_000_000));
                } else {
                    look(client, random);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A quarter of the people answer questions of orders that they take down. */
    private void sell(HttpClient client, String order) throws InterruptedException {
        String page = get(client, "sales, new", "/sales/new");
        page = post(
                client,
                "sales, taken down",
                "/sales/new",
                fields(page) + "&customer=Load&family=pannier-van&built=1968&number=" + order + "&due=&partner=");
        for (int i = 0; i < 6 && System.nanoTime() < until; i++) {
            Matcher value = VALUE.matcher(page);
            if (!value.find()) {
                return;
            }
            page = post(
                    client,
                    "sales, answered",
                    "/sales/order/" + order + "/answer",
                    fields(page.substring(page.indexOf("/answer\""))) + "&value=" + value.group(1));
        }
    }

    private static String fields(String page) {
        Map<String, String> found = new TreeMap<>();
        Matcher field = FIELD.matcher(page);
        while (field.find()) {
            found.putIfAbsent(field.group(1), field.group(2));
        }
        StringBuilder form = new StringBuilder();
        found.forEach((name, value) ->
                form.append(form.isEmpty() ? "" : "&").append(name).append('=').append(value));
        return form.toString();
    }

    /** Pages that are looked at, by their kind. */
    private static Map<String, String> looks(int part) {
        return Map.ofEntries(
                Map.entry("sales, orders", "/sales"),
                Map.entry("stores, today", "/stores"),
                Map.entry("stores, where", "/stores/where?word=SC-" + part),
                Map.entry("stores, pick", "/stores/pick?order=BL-1001"),
                Map.entry("stores, short", "/stores/short"),
                Map.entry("stores, purchases", "/stores/purchases"),
                Map.entry("stores, made here", "/stores/made"),
                Map.entry("fabrication, today", "/fabrication"),
                Map.entry("bench, today", "/bench"),
                Map.entry("bench, test", "/bench/test/BL-1001"),
                Map.entry("engineering, recall", "/engineering/recall?lot=L-" + part + "-3"),
                Map.entry("office, load", "/office/load"),
                Map.entry("office, morning", "/office"));
    }

    private void look(HttpClient client, Random random) throws InterruptedException {
        List<Map.Entry<String, String>> looks = List.copyOf(new TreeMap<>(looks(random.nextInt(PART))).entrySet());
        Map.Entry<String, String> page = looks.get(random.nextInt(looks.size()));
        get(client, page.getKey(), page.getValue());
    }

    /** Processor time of each kind of page, one after the other, which other work on the machine does not change. */
    private static void quiet(Process process, URI desk) throws IOException, InterruptedException {
        HttpClient client =
                HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        System.out.printf(Locale.ROOT, "%-24s %18s %10s%n", "page", "processor, ms", "kB");
        for (Map.Entry<String, String> page : new TreeMap<>(looks(1)).entrySet()) {
            HttpRequest request =
                    HttpRequest.newBuilder(desk.resolve(page.getValue())).build();
            client.send(request, BodyHandlers.ofString());
            double before = processorMs(process);
            int bytes = 0;
            for (int i = 0; i < QUIET; i++) {
                bytes = client.send(request, BodyHandlers.ofByteArray()).body().length;
            }
            double each = (processorMs(process) - before) / QUIET;
            System.out.printf(Locale.ROOT, "%-24s %18.1f %10.1f%n", page.getKey(), each, bytes / 1000.0);
        }
    }

    private static double processorMs(Process process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO).toMillis();
    }

    private String get(HttpClient client, String kind, String path) throws InterruptedException {
        return send(client, kind, HttpRequest.newBuilder(desk.resolve(path)));
    }

    private String post(HttpClient client, String kind, String path, String form) throws InterruptedException {
        String answer = send(
                client,
                kind,
                HttpRequest.newBuilder(desk.resolve(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Origin", desk.toString().replaceAll("/$", ""))
                        .POST(BodyPublishers.ofString(form)));
        return answer.startsWith("/") ? get(client, "sales, card", answer) : answer;
    }

    /** The page, or the path that it leads to. */
    private String send(HttpClient client, String kind, HttpRequest.Builder request) throws InterruptedException {
        Thread.sleep(thoughtMs / 2 + new Random().nextInt(Math.max(1, thoughtMs)));
        long begun = System.nanoTime();
        try {
            HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
            times.computeIfAbsent(kind, any -> Collections.synchronizedList(new ArrayList<>()))
                    .add(System.nanoTime() - begun);
            if (answer.statusCode() != 200 && answer.statusCode() != 303) {
                errors.merge(kind + ": " + answer.statusCode(), 1, Integer::sum);
            }
            return answer.headers().firstValue("Location").orElse(answer.body());
        } catch (IOException e) {
            errors.merge(kind + ": " + e.getClass().getSimpleName(), 1, Integer::sum);
            return "";
        }
    }

    private void print() {
        List<Long> all = new ArrayList<>();
        System.out.printf(Locale.ROOT, "%-24s %8s %10s %10s %10s%n", "page", "times", "p50, ms", "p95, ms", "most, ms");
        times.forEach((kind, each) -> {
            row(kind, new ArrayList<>(each));
            all.addAll(each);
        });
        row("all", all);
        System.out.println("errors " + errors);
    }

    private static void row(String kind, List<Long> times) {
        Collections.sort(times);
        System.out.printf(
                Locale.ROOT,
                "%-24s %8d %10.1f %10.1f %10.1f%n",
                kind,
                times.size(),
                at(times, 0.5),
                at(times, 0.95),
                at(times, 1));
    }

    private static double at(List<Long> sorted, double share) {
        return sorted.isEmpty()
                ? 0
                : sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * sorted.size()))) / 1e6;
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new IllegalStateException(outcome.faults().toString());
    }
}

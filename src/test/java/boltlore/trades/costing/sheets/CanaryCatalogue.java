package boltlore.trades.costing.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The demo catalogue with costs that cannot be mistaken: each part costs 7 followed by four digits and .93, an hour costs
 * 4711.93 at least, and every supplier and coater is called CANARY.
 */
final class CanaryCatalogue {

    /** Fewer costs are planted, so that no sum of others reads like one of them by chance. */
    private static final int MOST = 2000;

    /** How a planted figure reads, whatever stands around it. */
    static final Pattern FIGURE = Pattern.compile("7[01][0-9]{3}[.,]93|4711[.,]9[0-9]");

    static final String NAME = "CANARY";

    private static final Pattern COST = Pattern.compile("\"cost\": \"[0-9.]+\"");
    private static final Pattern PER_HOUR = Pattern.compile("\"perHour\": \"[0-9.]+\"");
    private static final Pattern SUPPLIER = Pattern.compile("\"(supplier|coater)\": \"");

    private int parts;

    private CanaryCatalogue() {}

    static Catalogue in(Path folder) throws IOException {
        CanaryCatalogue canary = new CanaryCatalogue();
        Path demo = Path.of("catalog");
        try (Stream<Path> all = Files.walk(demo)) {
            for (Path each : all.sorted().toList()) {
                canary.copy(each, folder.resolve(demo.relativize(each).toString()));
            }
        }
        return QuotedDemo.catalogue(folder);
    }

    private void copy(Path from, Path to) throws IOException {
        if (Files.isDirectory(from)) {
            Files.createDirectories(to);
        } else {
            Files.writeString(to, planted(Files.readString(from)));
        }
    }

    private String planted(String text) {
        String costs = COST.matcher(text).replaceAll(this::cost);
        String rates = PER_HOUR.matcher(costs).replaceAll("\"perHour\": \"4711.93\"");
        return SUPPLIER.matcher(rates).replaceAll("\"$1\": \"" + NAME + " ");
    }

    private String cost(MatchResult found) {
        parts++;
        assertThat(parts).isLessThan(MOST);
        return Matcher.quoteReplacement("\"cost\": \"7%04d.93\"".formatted(parts));
    }
}

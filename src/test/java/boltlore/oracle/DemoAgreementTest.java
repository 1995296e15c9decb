package boltlore.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.findings.Severity;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.resolution.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules and oracle on the families that are shipped. */
class DemoAgreementTest {

    /** A family has hundreds of thousands of valid choices; for more of them, say -Dboltlore.variants=3000. */
    private static final int VARIANTS = Integer.getInteger("boltlore.variants", 300);

    private static final Path FOLDER = Path.of("catalog");
    private static final Catalogue CATALOGUE = WorkedExample.sound(CatalogueReader.read(FOLDER));
    private static final Agreement AGREEMENT = new Agreement(CATALOGUE);
    private static final Oracle ORACLE = new Oracle(CATALOGUE);

    static SortedSet<String> families() {
        return new TreeSet<>(CATALOGUE.families().keySet());
    }

    static List<Path> orders() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER.resolve("orders"))) {
            return files.filter(file -> !file.endsWith("expected.json"))
                    .sorted()
                    .toList();
        }
    }

    private static List<Choices> spread(String family, int most) {
        return new Variants(CATALOGUE.family(family)).spread(most);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("families")
    void they_agree_on_variants_spread_over_all(String family) {
        List<Choices> variants = spread(family, VARIANTS);

        assertThat(variants).hasSize(VARIANTS);
        variants.forEach(AGREEMENT::on);
    }

    @ParameterizedTest
    @MethodSource("orders")
    void they_agree_on_each_demo_order_that_can_be_resolved(Path file) {
        Order order = WorkedExample.sound(OrderReader.read(file, CATALOGUE));
        if (order.choices().settled()
                && new PlainChoice(order.choices().family(), order.choices().values()).valid()) {
            AGREEMENT.on(order.choices(), order.leftOut());
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void leaving_out_all_unused_brackets_never_stops_a_kit(String family) {
        for (Choices choices : spread(family, 300)) {
            assertThat(stops(choices, new LeftOut.Undecided())).containsAll(stops(choices, new LeftOut.AllUnused()));
        }
    }

    private static List<Finding> stops(Choices choices, LeftOut leftOut) {
        return ORACLE.resolve(choices, leftOut).findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .toList();
    }
}

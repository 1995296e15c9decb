package boltlore.trades.mounting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Mounting.Mount;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.logic.Deadline;
import boltlore.oracle.Agreement;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.proof.Answer;
import boltlore.proof.KitView;
import boltlore.proof.Prover;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The bolts of every mount are asked of every valid order before:")
class MountKindsTest {

    private static final String PICK_UP = "stook-pickup";
    private static final String VAN = "pannier-van";
    private static final int SOME = 40;

    @TempDir
    private Path folder;

    /** The demo with a text exchanged wherever it stands on lines of a file that match. */
    private Catalogue changed(String file, String lines, String from, String to) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("catalog"))) {
            for (Path each : files.filter(Files::isRegularFile).toList()) {
                Path there = folder.resolve(Path.of("catalog").relativize(each));
                Files.createDirectories(there.getParent());
                Files.copy(each, there);
            }
        }
        Path changed = folder.resolve(file);
        String text = Files.readString(changed);
        String other = text.lines()
                .map(line -> line.matches(".*" + lines + ".*") ? line.replace(from, to) : line)
                .collect(Collectors.joining("\n"));
        assertThat(other).isNotEqualTo(text.strip());
        Files.writeString(changed, other);
        Outcome<Catalogue> read = CatalogueReader.read(folder);
        assertThat(read.faults()).isEmpty();
        return ((Outcome.Sound<Catalogue>) read).value();
    }

    private static List<Answer.Defect> defects(Catalogue catalogue, String family) {
        return Prover.prove(catalogue, catalogue.family(family), MountKinds.all(), Deadline.NONE, Prover.Progress.NONE)
                .defects()
                .toList();
    }

    /** What the mounting sheet of that order has of these kinds. */
    private static Stream<Finding> ofKit(Agreement agreement, Choices choices) {
        KitInWork kit = new KitInWork(
                agreement.resolver().plan(choices.family().name()),
                BillMaker.make(
                        agreement.resolver().plan(choices.family().name()),
                        Order.draft(choices),
                        Agreement.resolved(agreement.resolver().resolve(choices, new LeftOut.Undecided()))),
                LocalDate.EPOCH);
        Outcome<List<TradeResult>> worked = new MountingTrade().work(List.of(kit), Given.NONE);
        return ((Outcome.Sound<List<TradeResult>>) worked)
                .value().get(0).findings().all().stream()
                        .filter(finding -> MountKinds.all().stream()
                                .anyMatch(kind ->
                                        kind.name().equals(finding.kind().code())));
    }

    @ParameterizedTest
    @ValueSource(strings = {VAN, PICK_UP})
    void no_order_of_the_demo_has_any_of_it(String family) {
        Outcome<Catalogue> read = CatalogueReader.read(Path.of("catalog"));
        assertThat(defects(((Outcome.Sound<Catalogue>) read).value(), family)).isEmpty();
    }

    /** ISO 898-1: M10 with 58 mm² and 800 MPa; worked by hand 8 × 0.6 × 800 × 58 / 1.25 N on two sides are 89.0 kN each. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "parts/stook-battery.json | \"part\": \"ST-BB-E[LR]\" | \"each\": \"3\" | \"each\": \"2\" | mount bolts weaker in kit: battery-brackets | the kit has 8 bolts there (M10 8.8); each mount bears 89.0 kN",
                "parts/stook-battery.json | \"part\": \"ST-BB-EL\" | FX-M10X30 | FX-M8X25 | mount bolts weaker in kit: battery-brackets | the kit has 12 bolts there (M8 8.8, M10 8.8)",
                "families/stook-pickup/driving.json | \"mount\": \"battery-brackets\" | \"count\": 6 | \"count\": 5 | mount bolts other in kit: battery-brackets | the mount is judged with 10 of 58",
                "families/stook-pickup/driving.json | \"mount\": \"battery-brackets\" | \"stressAreaMm2\": \"58\" | \"stressAreaMm2\": \"56\" | mount bolts other in kit: battery-brackets | the mount is judged with 12 of 56",
                "families/stook-pickup/driving.json | \"mount\": \"drive-mount-rear\" | \"at\": [\"drive-mount-rear\"], |  | mount bolts not named: drive-mount-rear | nobody says which bolts",
            })
    void a_defect_comes_with_an_order_whose_sheet_tells_the_same(
            String file, String lines, String from, @Nullable String to, String title, String says) throws IOException {
        Catalogue catalogue = changed(file, lines, from, to == null ? "" : to);

        assertThat(defects(catalogue, PICK_UP)).singleElement().satisfies(defect -> {
            assertThat(defect.statement().title()).isEqualTo(title);
            assertThat(defect.statement().refuted()).contains(says);
            assertThat(ofKit(new Agreement(catalogue), defect.witness().orElseThrow()))
                    .extracting(Finding::says)
                    .containsExactly(defect.statement().refuted());
        });
    }

    /** A stress area rounded as tables round it, and as many bolts under another number. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "families/stook-pickup/driving.json | \"mount\": \"battery-brackets\" | \"stressAreaMm2\": \"58\" | \"stressAreaMm2\": \"57.5\"",
                "parts/stook-battery.json | \"part\": \"ST-BB-EL\" | FX-M10X30 | FX-M10X25"
            })
    void other_figures_of_the_same_strength_are_none(String file, String lines, String from, String to)
            throws IOException {
        assertThat(defects(changed(file, lines, from, to), PICK_UP)).isEmpty();
    }

    @Test
    void proof_and_sheets_agree_on_orders_all_over_a_family_with_faults() throws IOException {
        Catalogue catalogue =
                changed("parts/pannier-battery.json", "\"part\": \"PV-(BB-EL|RB-R)\"", "\"each\": \"", "\"each\": \"1");
        Agreement agreement = new Agreement(catalogue);
        Family family = catalogue.family(VAN);
        KitView kit = KitView.of(catalogue, family, false, Deadline.NONE);
        List<Mount> mounts = family.driving().mounting().mounts();
        Set<String> met = new TreeSet<>();
        for (Choices order : new Variants(family).spread(SOME)) {
            Set<String> ofKit = ofKit(agreement, order).map(Finding::subject).collect(Collectors.toSet());
            assertThat(mounts.stream()
                            .filter(mount -> Conditions.holds(
                                    new MountBolts(kit, mount, MountFigures.declared(mount))
                                            .others()
                                            .orElseThrow(),
                                    order))
                            .map(Mount::name)
                            .collect(Collectors.toSet()))
                    .as(order.toString())
                    .isEqualTo(ofKit);
            met.addAll(ofKit);
        }
        assertThat(met).containsExactly("battery-brackets", "rear-brackets");
    }
}

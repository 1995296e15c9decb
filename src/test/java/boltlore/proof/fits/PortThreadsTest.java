package boltlore.proof.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.ThreadName;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.demo.Barrow;
import boltlore.faults.Outcome;
import boltlore.logic.Deadline;
import boltlore.proof.Answer;
import boltlore.proof.Prover;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Ports that are screwed together")
class PortThreadsTest {

    private static final BigDecimal INCH_MM = new BigDecimal("25.4");

    @TempDir
    private Path folder;

    /**
     * Outer diameter in inches and threads to the inch: NPT after the table 'Standard pipe thread fittings' of
     * avantorsciences.com, G after the chart 'British Standard Pipe (BSP)' of threadchart.net.
     */
    @ParameterizedTest
    @CsvSource({
        "1/8-27 NPT, 0.405, 27",
        "1/4-18 NPT, 0.540, 18",
        "3/8-18 NPT, 0.675, 18",
        "1/2-14 NPT, 0.840, 14",
        "3/4-14 NPT, 1.050, 14",
        "1-11.5 NPT, 1.315, 11.5",
        "1 1/4-11.5 NPT, 1.660, 11.5",
        "2-11.5 NPT, 2.375, 11.5",
        "G 1/8, 0.3830, 28",
        "G 1/4, 0.5180, 19",
        "G 3/8, 0.6560, 19",
        "G 1/2, 0.8250, 14",
        "G 3/4, 1.0410, 14",
        "G 1, 1.3090, 11",
        "G 1 1/2, 1.8820, 11"
    })
    void have_the_sizes_of_the_published_tables(String thread, BigDecimal inches, BigDecimal toTheInch) {
        ThreadName name = ThreadName.of(thread).orElseThrow();

        assertThat(name.diameterMm()).isCloseTo(inches.multiply(INCH_MM), within(new BigDecimal("0.005")));
        assertThat(name.pitchMm().multiply(toTheInch)).isCloseTo(INCH_MM, within(new BigDecimal("0.000001")));
    }

    /** Pitch and largest diameter in mm: Mechanical Engineer's Pocket Book, 4.1.38 ISO pipe threads, tapered. */
    @ParameterizedTest
    @CsvSource({"R 1/8, 9.728, 0.907", "Rc 1/4, 13.157, 1.337", "Rp 3/8, 16.662, 1.337"})
    void have_the_sizes_of_the_handbook(String thread, BigDecimal diameterMm, BigDecimal pitchMm) {
        ThreadName name = ThreadName.of(thread).orElseThrow();

        assertThat(name.diameterMm()).isEqualByComparingTo(diameterMm);
        assertThat(name.pitchMm()).isCloseTo(pitchMm, within(new BigDecimal("0.0005")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1/4-19 NPT", "1/4-18 BSPP", "G 1/5", "1/4 NPT", "11/2-11.5 NPT", "G", "g 1/4", "M", "3/8-25"})
    void of_no_standard_are_not_read(String written) {
        assertThat(ThreadName.of(written)).isEmpty();
    }

    /** ISO 7-1: taper R outside seals in parallel Rp or taper Rc; NPT has flanks of 60 degrees and G and R of 55. */
    @ParameterizedTest
    @CsvSource({
        "1/4-18 NPT, 1/4-18 NPT, true",
        "1/4-18 NPT, G 1/4, false",
        "G 1/4, 1/4-18 NPT, false",
        "1/4-18 NPT, 3/8-18 NPT, false",
        "G 1/4, G 1/4, true",
        "G 1/4 A, 1/4-19 BSPP, true",
        "G 1/4, G 3/8, false",
        "R 1/4, Rp 1/4, true",
        "R 1/4, Rc 1/4, true",
        "Rp 1/4, R 1/4, false",
        "Rc 1/4, Rc 1/4, false",
        "R 1/4, G 1/4, false",
        "9/16-18 UNF, 9/16-18, true",
        "9/16-18 UNF, M14x1.5, false"
    })
    void go_into_one_another(String outer, String inner, boolean goes) {
        assertThat(ThreadName.mate(outer, inner)).isEqualTo(goes);
    }

    private List<String> found(String motor, String lamp) throws IOException {
        Barrow.write(folder);
        Path parts = folder.resolve("parts/barrow.json");
        Files.writeString(
                parts,
                Files.readString(parts)
                        .replace(
                                "\"bin\": \"M-90-01-A-01\"",
                                "\"bin\": \"M-90-01-A-01\", " + port("outlet", "male", motor))
                        .replace(
                                "\"bin\": \"M-90-01-A-02\"",
                                "\"bin\": \"M-90-01-A-02\", " + port("outlet", "male", motor))
                        .replace(
                                "\"bin\": \"M-90-01-A-03\"",
                                "\"bin\": \"M-90-01-A-03\", " + port("inlet", "female", lamp)));
        Files.writeString(folder.resolve("families/tin-barrow/fits.json"), """
                {"$schema": "../../schema/fits.schema.json", "paths": [{"path": "warm-lamp", "flow": "coolant",
                 "required": {"lamp": "yes"}, "through": [{"position": "hub-motor", "out": "outlet"}, {"position": "lamp", "in": "inlet"}]}]}
                """);
        if (CatalogueReader.read(folder) instanceof Outcome.Sound<Catalogue> sound) {
            return Prover.prove(
                            sound.value(),
                            sound.value().family("tin-barrow"),
                            FitKinds.all(),
                            Deadline.NONE,
                            Prover.Progress.NONE)
                    .defects()
                    .filter(defect -> defect.statement().title().startsWith("path"))
                    .map(PortThreadsTest::says)
                    .toList();
        }
        throw new AssertionError(CatalogueReader.read(folder).faults().toString());
    }

    private static String says(Answer.Defect defect) {
        return defect.statement().refuted();
    }

    private static String port(String name, String half, String thread) {
        return "\"ports\": [{\"port\": \"" + name + "\", \"kind\": \"fitting\", \"flow\": \"coolant\", \"half\": \""
                + half + "\", \"thread\": \"" + thread + "\"}]";
    }

    @Test
    void of_one_thread_are_joined() throws IOException {
        assertThat(found("1/4-18 NPT", "1/4-18 NPT")).isEmpty();
    }

    @Test
    void of_two_threads_break_the_path_which_names_both() throws IOException {
        assertThat(found("1/4-18 NPT", "G 1/4"))
                .singleElement()
                .asString()
                .contains("(TB-HUB-500), port outlet (coolant, fitting, NPT thread, 13.716 x 1.411 mm, male)")
                .contains("(TB-LAMP), port inlet (coolant, fitting, G thread, 13.157 x 1.337 mm, female)");
    }
}

package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The smallest family of catalog/README.md, copied out as it says there,")
class SmallestFamilyTest {

    private static final Pattern FILE = Pattern.compile("`([a-z0-9./-]+\\.json)`\\n```json\\n(.*?)```", Pattern.DOTALL);
    private static final List<String> COPIED = List.of(
            "workshop/workshop.json",
            "workshop/markets.json",
            "workshop/coating.json",
            "workshop/cautions.json",
            "finishes.json",
            "materials.json");

    @TempDir
    private Path catalogue;

    @BeforeEach
    void copy() throws IOException {
        for (String file : COPIED) {
            write(file, Files.readString(Path.of("catalog").resolve(file)));
        }
        Matcher files = FILE.matcher(Files.readString(Path.of("catalog/README.md")));
        while (files.find()) {
            write(files.group(1), files.group(2));
        }
    }

    private void write(String file, String text) throws IOException {
        Path to = catalogue.resolve(file);
        Files.createDirectories(to.getParent());
        Files.writeString(to, text);
    }

    @Test
    void is_consistent() {
        assertThat(boltlore("check", catalogue).out())
                .contains("3 parts; tin-barrow with 2 options, 1 limit, 2 positions, 3 lines.")
                .contains("The data is consistent.");
    }

    @Test
    void is_proved_without_a_defect() {
        Ran proof = boltlore("prove", "tin-barrow", "--catalogue", catalogue);
        assertThat(proof.exit()).isEqualTo(Exit.OK);
        assertThat(proof.out()).contains("about 3 valid orders").contains("No defect was found.");
    }

    @Test
    void makes_the_kit_of_its_order() {
        Path out = catalogue.resolve("exports");
        Ran kit = boltlore("kit", catalogue.resolve("orders/tb-1.json"), "--catalogue", catalogue, "--out", out);
        assertThat(kit.exit()).isEqualTo(Exit.OK);
        assertThat(kit.out()).contains("2 lines, 2 part numbers; 4.4 kg");
        assertThat(out.resolve("TB-1/bill.xlsx")).exists();
    }

    @Test
    void names_schemas_that_lie_where_it_says() throws IOException {
        try (Stream<Path> files = Files.walk(catalogue)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                Matcher schema = Pattern.compile("\"\\$schema\": \"([^\"]+)\"").matcher(Files.readString(file));
                assertThat(schema.find()).isTrue();
                Path there = file.resolveSibling(schema.group(1)).normalize();
                assertThat(Path.of("catalog").resolve(catalogue.relativize(there)))
                        .exists();
            }
        }
    }
}

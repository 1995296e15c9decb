package boltlore.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Judged by the schema that CycloneDX publishes (ECMA-424 for 1.6), as its own library for Java brings it. */
@DisplayName("The bill of software")
class BillOfSoftwareIT {

    private static final Path BILL = Path.of("target/boltlore/licences/libraries.cdx.json");
    private static final String PUBLISHED = "http://cyclonedx.org/schema/";
    private static final Pattern VERSION = Pattern.compile("\"specVersion\"\\s*:\\s*\"([0-9.]+)\"");

    private String bill = "";

    @BeforeEach
    void read() throws IOException {
        bill = Files.readString(BILL);
    }

    private static List<Error> errors(String text) {
        Matcher version = VERSION.matcher(text);
        assertThat(version.find()).isTrue();
        Schema schema = SchemaRegistry.withDefaultDialect(
                        SpecificationVersion.DRAFT_7,
                        builder -> builder.schemaIdResolvers(ids -> ids.mapPrefix(PUBLISHED, "classpath:")))
                .getSchema(SchemaLocation.of(PUBLISHED + "bom-" + version.group(1) + ".schema.json"));
        return schema.validate(text, InputFormat.JSON);
    }

    @Test
    void is_what_the_published_schema_of_its_version_calls_for() {
        assertThat(errors(bill)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"SHA-256, SHA-2560", "\"type\" : \"library\", \"type\" : \"book\"", "Apache-2.0, Apache-2.0.0"})
    @DisplayName("would not be with a slip in it")
    void slips(String from, String to) {
        assertThat(bill).contains(from);

        assertThat(errors(bill.replaceFirst(Pattern.quote(from), to))).isNotEmpty();
    }
}

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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The list of libraries that the packages bring, against the schema that its format's makers publish: CycloneDX 1.6
 * (ECMA-424, 1st edition 2024), bom-1.6.schema.json, as their own Java library carries it.
 */
class BillOfSoftwareIT {

    private static final Path BILL = Path.of("target/boltlore/licences/libraries.cdx.json");

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(
                    SpecificationVersion.DRAFT_7,
                    registry -> registry.schemaIdResolvers(
                            ids -> ids.mapPrefix("http://cyclonedx.org/schema/", "classpath:")))
            .getSchema(SchemaLocation.of("http://cyclonedx.org/schema/bom-1.6.schema.json"));

    private String bill = "";

    @BeforeEach
    void read() throws IOException {
        bill = Files.readString(BILL);
    }

    private static List<String> faults(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    @Test
    void it_keeps_the_published_schema() {
        assertThat(bill).contains("\"specVersion\" : \"1.6\"");
        assertThat(faults(bill)).isEmpty();
    }

    @Test
    void a_licence_that_is_none_of_spdx_is_refused_by_the_schema() {
        String other = bill.replaceFirst("\"id\" : \"Apache-2.0\"", "\"id\" : \"Apache-2.O\"");

        assertThat(other).isNotEqualTo(bill);
        assertThat(faults(other)).isNotEmpty();
    }

    @Test
    void a_checksum_that_is_cut_off_is_refused_by_the_schema() {
        String other = bill.replaceFirst("(\"content\" : \"[0-9a-f]{31})[0-9a-f]+\"", "$1\"");

        assertThat(other).isNotEqualTo(bill);
        assertThat(faults(other)).isNotEmpty();
    }
}

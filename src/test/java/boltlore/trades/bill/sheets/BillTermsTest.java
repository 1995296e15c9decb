package boltlore.trades.bill.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Table;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ISO 7573:2008, Technical product documentation, Parts lists. Its terms are in the public preview of clause 3; which of
 * them every list must have is from memory.
 */
@DisplayName("The bill has the columns of a parts list")
class BillTermsTest {

    @ParameterizedTest(name = "ISO 7573 \"{0}\" is column \"{2}\" [{3}]")
    @CsvSource(textBlock = """
                    part reference,  position, Position,    public preview of clause 3
                    part number,     part,     Part number, public preview of clause 3
                    part name,       name,     Name,        public preview of clause 3
                    quantity,        quantity, Qty,         public preview of clause 3
                    unit,            unit,     Unit,        public preview of clause 3
                    revision,        revision, Rev.,        from memory
                    mass,            massEach, Mass each,   from memory
                    remarks,         calledBy, Needed by, from memory
                    """)
    void has(String term, String key, String heading, String source) {
        assertThat(headings()).containsEntry(key, heading);
    }

    @Test
    @DisplayName("and what the workshop's own bill adds: levels, cost, time and trade")
    void adds() {
        assertThat(headings().keySet())
                .contains("level", "finish", "source", "massExtended", "unitCost", "scrap", "extended", "coating")
                .contains("leadDays", "hs", "origin", "tracked")
                .doesNotContain("price", "margin");
    }

    private static Map<String, String> headings() {
        Table bill = DemoKit.of("BL-1001")
                .billBook()
                .page("Bill")
                .tables()
                .filter(table -> table.name().equals("bill"))
                .findFirst()
                .orElseThrow();
        return bill.columns().stream().collect(Collectors.toMap(Column::key, Column::heading));
    }
}

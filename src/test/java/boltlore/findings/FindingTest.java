package boltlore.findings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.trades.KitFinding;
import boltlore.trades.charging.ChargingFinding;
import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A finding")
class FindingTest {

    private static Finding fuse(String amps) {
        return Finding.of(
                ChargingFinding.LOAD_ABOVE_FUSE,
                "battery",
                "branch",
                "Battery to box",
                "load",
                new BigDecimal("310.5"),
                "fuse",
                new BigDecimal(amps));
    }

    @Test
    @DisplayName("says its sentence in the reader's language, with the language's decimal sign")
    void in_each_language() {
        assertThat(fuse("300").says()).isEqualTo("Battery to box: load of 310.5 A through a fuse of 300 A.");
        assertThat(fuse("300").says("de")).contains("310,5 A").contains("Sicherung");
        assertThat(fuse("300").says("fr")).contains("310,5 A").contains("fusible");
        assertThat(fuse("300").says("pl")).isEqualTo(fuse("300").says());
    }

    /** Lexique des règles typographiques en usage à l'Imprimerie nationale; from memory. */
    @Test
    @DisplayName("in French ends no line before a high sign, nor within quotation marks")
    void french_blanks() {
        assertThat(fuse("300").says("fr")).startsWith("Battery to box\u00A0: ").doesNotContain(" :");
        Finding waiver = Finding.of(KitFinding.WAIVER_WITHOUT_FINDING, "order", "waiver", "unused");
        assertThat(waiver.says("fr")).contains("«\u00A0unused\u00A0»");
        assertThat(waiver.says()).doesNotContain("\u00A0");
    }

    @Test
    @DisplayName("keeps an argument that looks like a message, or holds an apostrophe, as it is")
    void arguments_are_no_messages() {
        Finding waived = Finding.of(
                KitFinding.WAIVED_IN_ORDER,
                "battery",
                "finding",
                fuse("300"),
                "who",
                "O'Hara {who} '{0}'",
                "when",
                "2026-03-02",
                "why",
                "1{2}3");
        assertThat(waived.says())
                .isEqualTo("Waived: " + fuse("300").says() + " (O'Hara {who} '{0}', 2026-03-02: 1{2}3)");
    }

    @Test
    @DisplayName("is told worst first, once each, and none is lost when findings come together")
    void together() {
        Finding note = Finding.of(ChargingFinding.SUPPLY_NOT_KNOWN, "supply");
        Findings all = Findings.of(note).and(Findings.of(fuse("300"), note)).and(Findings.NONE);
        assertThat(all.all()).containsExactly(fuse("300"), note);
        assertThat(all.stops()).isTrue();
        assertThat(Findings.of(note).stops()).isFalse();
    }
}

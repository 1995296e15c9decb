package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Report;
import boltlore.report.WorkedExample;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class XlsxDeterminismTest {

    private final TimeZone zone = TimeZone.getDefault();
    private final Locale locale = Locale.getDefault();

    @AfterEach
    void put_the_clock_back() {
        TimeZone.setDefault(zone);
        Locale.setDefault(locale);
    }

    @Test
    void two_runs_give_the_same_bytes() {
        assertThat(Opened.bytes(WorkedExample.workbook())).isEqualTo(Opened.bytes(WorkedExample.workbook()));
    }

    @Test
    void two_machines_in_different_countries_give_the_same_bytes() {
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
        Locale.setDefault(Locale.GERMANY);
        byte[] there = Opened.bytes(WorkedExample.workbook());
        TimeZone.setDefault(TimeZone.getTimeZone("America/Anchorage"));
        Locale.setDefault(Locale.forLanguageTag("ar-EG"));
        assertThat(Opened.bytes(WorkedExample.workbook())).isEqualTo(there);
    }

    @Test
    void the_properties_say_what_the_workbook_says_and_its_date_not_today() {
        Opened opened = Opened.of(WorkedExample.workbook());
        assertThat(opened.find("docProps/core.xml", "//*[local-name()='created' or local-name()='modified']"))
                .containsExactly("2026-03-12T12:00:00Z", "2026-03-12T12:00:00Z");
        assertThat(opened.find("docProps/core.xml", "//*[local-name()='creator']"))
                .containsExactly("Ostrevale Kit Works");
    }

    @Test
    void another_date_gives_other_bytes() {
        Report example = WorkedExample.workbook();
        Report later = new Report(
                example.file(),
                example.title(),
                example.subject(),
                example.author(),
                example.dated().plusDays(1),
                example.language(),
                example.findings(),
                example.glance(),
                example.pages(),
                example.data());
        assertThat(Opened.bytes(later)).isNotEqualTo(Opened.bytes(example));
    }
}

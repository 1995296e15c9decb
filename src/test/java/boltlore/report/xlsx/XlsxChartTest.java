package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.WorkedExample;
import java.util.List;
import org.junit.jupiter.api.Test;

class XlsxChartTest {

    private static final String CHART = "xl/charts/chart1.xml";

    private final Opened opened = Opened.of(WorkedExample.workbook());

    private List<String> find(String path) {
        return opened.find(CHART, path);
    }

    @Test
    void bars_read_from_the_cells_of_the_page_and_hold_the_same_values() {
        assertThat(find("//*[name()='c:val']//*[name()='c:f']")).containsExactly("Front!$B$11:$B$13");
        assertThat(find("//*[name()='c:cat']//*[name()='c:f']")).containsExactly("Front!$A$11:$A$13");
        assertThat(find("//*[name()='c:val']//*[name()='c:v']")).containsExactly("3937.06", "1392.58", "1054.50");
        assertThat(opened.find("xl/worksheets/sheet1.xml", "//c[@r='B11' or @r='B12' or @r='B13']/v"))
                .containsExactly("3937.06", "1392.58", "1054.50");
    }

    @Test
    void bars_lie_flat_the_first_row_on_top() {
        assertThat(find("//*[name()='c:barDir']/@val")).containsExactly("bar");
        assertThat(find("//*[name()='c:catAx']//*[name()='c:orientation']/@val"))
                .containsExactly("maxMin");
    }

    @Test
    void the_axis_says_the_unit_and_there_is_neither_legend_nor_grid() {
        assertThat(find("//*[name()='c:valAx']/*[name()='c:title']")).containsExactly("Cost (EUR)");
        assertThat(find("//*[name()='c:legend' or name()='c:majorGridlines']")).isEmpty();
    }

    @Test
    void all_is_black_white_or_grey() {
        assertThat(find("//*[name()='a:srgbClr']/@val")).isNotEmpty().allMatch(XlsxChartTest::isGrey);
        assertThat(opened.find("xl/styles.xml", "//@rgb")).isNotEmpty().allMatch(rgb -> isGrey(rgb.substring(2)));
    }

    private static boolean isGrey(String rgb) {
        return rgb.substring(0, 2).equals(rgb.substring(2, 4))
                && rgb.substring(0, 2).equals(rgb.substring(4, 6));
    }
}

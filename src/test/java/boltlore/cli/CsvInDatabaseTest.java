package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All that {@code kit --all} writes as CSV (RFC 4180), loaded by H2's own reader and asked what is known otherwise. */
@DisplayName("The CSV of an order in a database")
class CsvInDatabaseTest {

    private static final Path ORDERS = Path.of("catalog", "orders");

    @TempDir
    private static Path out;

    private static String told = "";
    private static Connection database = null;

    @BeforeAll
    static void load() throws SQLException, IOException {
        Ran ran = Ran.boltlore("kit", "--all", ORDERS.resolve("bl-1001.json"), "--out", out);
        told = ran.out().replaceAll("\\s+", " ");
        database = DriverManager.getConnection("jdbc:h2:mem:csv;CASE_INSENSITIVE_IDENTIFIERS=TRUE");
        for (Path file : files(out)) {
            execute("create table \"" + name(file) + "\" as select * from csvread('" + file + "')");
        }
    }

    @AfterAll
    static void close() throws SQLException {
        database.close();
    }

    @Test
    void the_rows_of_the_bill_cost_what_the_kit_is_said_to_cost() throws SQLException {
        BigDecimal rows = number("select sum(coalesce(cast(\"extended (EUR)\" as decimal(20, 2)), 0)"
                + " + coalesce(cast(\"coating (EUR)\" as decimal(20, 2)), 0)) from \"bill-bill\"");
        assertThat(rows).isEqualByComparingTo(said("direct cost of the kit EUR ([0-9,.]+),"));
    }

    @Test
    void they_weigh_what_the_kit_is_said_to_weigh() throws SQLException {
        BigDecimal rows = number("select sum(cast(\"mass extended (kg)\" as decimal(20, 6))) from \"bill-bill\"");
        assertThat(rows.setScale(1, RoundingMode.HALF_UP)).isEqualByComparingTo(said("part numbers; ([0-9,.]+) kg"));
    }

    @Test
    void they_name_as_many_part_numbers_as_it_is_said_to_have() throws SQLException {
        assertThat(number("select count(distinct \"part\") from \"bill-bill\""))
                .isEqualByComparingTo(said("([0-9,]+) part numbers"));
    }

    @Test
    void each_part_lies_in_bags_as_often_as_it_is_taken_from_bins_and_from_coating() throws SQLException {
        String taken = "(select \"part\", coalesce(\"take\", \"measure\") as n from \"picking-list-bins\" union all"
                + " select \"part\", coalesce(\"take\", \"measure\") from \"picking-list-from-coating\")";
        String different =
                "select count(*) from (select \"part\", sum(cast(n as decimal(20, 3))) as taken from " + taken
                        + " group by \"part\") as t join (select \"part\", sum(cast(coalesce(\"take\", \"measure\") as"
                        + " decimal(20, 3))) as packed from \"picking-list-bags\" group by \"part\") as b"
                        + " on t.\"part\" = b.\"part\" where taken is distinct from packed";
        assertThat(number(different)).isZero();
        assertThat(number("select count(distinct \"part\") from " + taken))
                .isEqualByComparingTo(number("select count(distinct \"part\") from \"picking-list-bags\""));
        assertThat(number("select count(*) from \"picking-list-bags\"")).isPositive();
    }

    @Test
    void each_piece_that_hangs_in_a_load_belongs_to_a_batch() throws SQLException {
        String alone = "select count(*) from \"powder-coat-batch-load-pieces\" as h where not exists"
                + " (select 1 from \"powder-coat-batch-pieces\" as p where p.\"part\" = h.\"part\")";
        assertThat(number(alone)).isZero();
        assertThat(number("select count(*) from \"powder-coat-batch-load-pieces\""))
                .isPositive();
    }

    @Test
    void each_row_of_each_file_says_whose_it_is_and_none_is_a_sum() throws SQLException, IOException {
        List<String> silent = new ArrayList<>();
        for (Path file : files(out)) {
            if (file.getFileName().toString().equals("end-of-line-test-record.csv")) {
                continue;
            }
            String table = "\"" + name(file) + "\"";
            BigDecimal others = number("select count(*) from " + table + " where \"subject\" is null"
                    + " or \"subject\" not like '%BL-1001%'");
            if (others.signum() != 0) {
                silent.add(table);
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void no_figure_has_more_decimals_than_anybody_can_measure() throws IOException {
        Pattern longer = Pattern.compile("(?m)(?:^|,)-?[0-9]+\\.[0-9]{7,}(?=,|$)");
        for (Path file : files(out)) {
            assertThat(longer.matcher(Files.readString(file).replace("\r", "")).results())
                    .as(file.getFileName().toString())
                    .isEmpty();
        }
    }

    @Test
    void no_cell_goes_on_in_a_second_line() throws IOException {
        for (Path file : files(out)) {
            long lines = Files.readString(file).lines().count();
            assertThat(Files.readString(file).split("\r\n", -1).length - 1)
                    .as(file.getFileName().toString())
                    .isEqualTo((int) lines);
        }
    }

    @Test
    void columns_are_called_the_same_whatever_the_language_of_the_order(@TempDir Path german) throws IOException {
        Path order = files(ORDERS, ".json").stream()
                .filter(file -> read(file).contains("\"language\": \"de\""))
                .findFirst()
                .orElseThrow();
        Ran.boltlore("kit", "--all", order, "--out", german);
        int compared = 0;
        for (Path file : files(german)) {
            Path english = out.resolve("BL-1001/csv").resolve(Objects.requireNonNull(file.getFileName()));
            if (Files.exists(english)) {
                String heading = read(file).lines().findFirst().orElse("");
                assertThat(heading).as(file.toString()).matches("\\p{ASCII}*[a-z(][^äöüß]*");
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(40);
    }

    private static BigDecimal said(String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(told);
        assertThat(matcher.find()).as(pattern + " in " + told).isTrue();
        return new BigDecimal(matcher.group(1).replace(",", ""));
    }

    private static BigDecimal number(String query) throws SQLException {
        try (Statement statement = database.createStatement();
                ResultSet result = statement.executeQuery(query)) {
            result.next();
            return result.getBigDecimal(1);
        }
    }

    private static void execute(String command) throws SQLException {
        try (Statement statement = database.createStatement()) {
            statement.execute(command);
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName()).replace(".csv", "");
    }

    private static List<Path> files(Path folder) throws IOException {
        return files(folder, ".csv");
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}

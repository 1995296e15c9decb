package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Delivery;
import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Need;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Profit;
import boltlore.catalogue.Role;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What a sound catalogue says arrives in the records")
class CatalogueValuesTest {

    @TempDir
    private Path folder;

    private Catalogue catalogue;
    private Family cart;

    @BeforeEach
    void read() {
        catalogue = SmallCatalogue.in(folder).catalogue();
        cart = catalogue.family("cart");
    }

    private Part part(String number) {
        return catalogue.part(new PartNumber(number));
    }

    private Position position(String name) {
        return cart.position(new PositionName(name)).orElseThrow();
    }

    private Line line(String name) {
        return cart.line(new LineName(name)).orElseThrow();
    }

    private Facts facts(String option, String value) {
        return cart.option(new OptionName(option))
                .orElseThrow()
                .value(value)
                .orElseThrow()
                .facts();
    }

    private static Condition is(String option, String... values) {
        return new Condition.Is(new OptionName(option), new TreeSet<>(List.of(values)));
    }

    @Test
    void the_workshop() {
        assertThat(catalogue.workshop().currency().getCurrencyCode()).isEqualTo("EUR");
        assertThat(catalogue.workshop().language()).isEqualTo("en");
        assertThat(catalogue.workshop().languages()).containsExactly("en", "de");
        assertThat(catalogue.workshop().partners().get("Far Works").language()).isEqualTo("de");
        assertThat(catalogue.workshop().cautions().get("high-voltage").sheets()).containsExactly("bill", "picking");
        assertThat(catalogue
                        .workshop()
                        .coating()
                        .coaters()
                        .get("Outer Coatings")
                        .fitsMasks())
                .isTrue();
    }

    @Test
    void a_coat_takes_the_workshops_utilisation_where_it_has_none() {
        assertThat(catalogue.finishes().get("black").coats().get(0).utilisationPercent())
                .isEqualByComparingTo("55");
    }

    @Test
    void the_three_ways_to_put_a_finish_on() {
        assertThat(catalogue.finishes().get("black").where()).isEqualTo(new CoatedWhere.OwnOven("own"));
        assertThat(catalogue.finishes().get("zinc").where())
                .isEqualTo(new CoatedWhere.OutsideByArea("Outer Coatings", new BigDecimal("20")));
        assertThat(catalogue.finishes().get("grey").where())
                .isEqualTo(new CoatedWhere.OutsideByPiece("Outer Coatings", new BigDecimal("5.50")));
    }

    @Test
    void an_assembly() {
        Part frame = part("FRAME");
        assertThat(frame.contains())
                .extracting(child -> child.part() + " " + child.quantity())
                .containsExactly("RAIL 2", "LUG 4");
        assertThat(frame.structure().stocked()).isTrue();
        assertThat(frame.name().in("de")).isEqualTo("Rahmen");
        assertThat(frame.massKg()).isNull();
        assertThat(frame.needs())
                .extracting(Need::ask)
                .containsExactly(new Need.AtJoint("rail-ends", new BigDecimal("4")));
    }

    @Test
    void a_bought_part() {
        Part bolt = part("BOLT");
        assertThat(bolt.buying())
                .isNotNull()
                .satisfies(buying -> assertThat(buying.packOf()).isEqualByComparingTo("50"));
        assertThat(bolt.scrapPercent()).isEqualByComparingTo("2.5");
        assertThat(part("PLUG").buying()).isNull();
        assertThat(part("PEDAL-L").handed()).isEqualTo(new Handed("pedal", Hand.LEFT));
    }

    @Test
    void conditions() {
        assertThat(line("cable").when())
                .isEqualTo(new Condition.All(List.of(
                        is("placed", "2025-01-01-to-2027-12-31"),
                        is("chassis", "100-to-4999"),
                        new Condition.All(List.of(is("inlet", "one"), is("era", "early", "late"))))));
        assertThat(line("frame").when()).isEqualTo(Condition.ALWAYS);
        assertThat(line("motor").needs().get(0).when())
                .isEqualTo(new Condition.Not(new Condition.Filled(new PositionName("cable"))));
        assertThat(cart.limits().get(0).when())
                .isEqualTo(new Condition.All(List.of(is("era", "early"), is("drive-side", "left"))));
    }

    @Test
    void a_limit_with_a_case_forbids_the_case_without_what_must_hold() {
        Limit limit = cart.limits().get(1);
        assertThat(limit.when()).isEqualTo(is("market", "north"));
        assertThat(limit.then())
                .isEqualTo(new Condition.AnyOf(
                        List.of(is("inlet", "one"), new Condition.Not(is("supply", "strong", "weak")))));
    }

    @Test
    void build_dates() {
        assertThat(cart.option(new OptionName("era")).orElseThrow().builtFrom())
                .contains(new BuildDates("middle", LocalDate.of(1970, 1, 1), LocalDate.of(1974, 12, 31)));
    }

    @Test
    @DisplayName("a market's value takes the market's facts where it has none of its own")
    void marketFacts() {
        assertThat(facts("market", "south").volts()).isEqualByComparingTo("220");
        assertThat(facts("market", "south").phases()).isEqualTo(3);
        assertThat(facts("market", "south").languages()).containsExactly("de");
        assertThat(facts("market", "north").volts()).isEqualByComparingTo("240");
        assertThat(facts("supply", "strong").amps()).isEqualByComparingTo("32");
        assertThat(facts("export", "none")).isEqualTo(Facts.NONE);
    }

    @Test
    void roles_finishes_and_pairs() {
        assertThat(cart.inRole(Role.CHARGER)).get().extracting("name").isEqualTo(new OptionName("charger"));
        assertThat(cart.finishes())
                .containsEntry("frame", new FinishRule.DecidedBy(new OptionName("colour")))
                .containsEntry("bracket", new FinishRule.Fixed("zinc"));
        assertThat(cart.pairs())
                .containsExactly(new Pair.One(
                        "pedal",
                        new OptionName("drive-side"),
                        "left",
                        "right",
                        new Condition.Filled(new PositionName("motor"))));
    }

    @Test
    void positions_come_in_the_order_of_their_files() {
        assertThat(cart.positions())
                .extracting(position -> position.name().text())
                .containsExactly("frame", "holder", "motor", "pedals", "cable");
        assertThat(position("frame").bag()).isEqualTo("crate 1");
        assertThat(position("holder").bag()).isEqualTo("crate 1");
        assertThat(position("cable").under()).isEqualTo(new PositionName("holder"));
    }

    @Test
    void a_free_position_is_never_due_and_another_always_unless_it_says_when() {
        assertThat(position("cable").fill()).isEqualTo(Fill.FREE);
        assertThat(position("frame").due()).isNull();
        assertThat(position("motor").due()).isEqualTo(is("inlet", "one"));
    }

    @Test
    @DisplayName("a position that says nothing is held by any line that carries it; one that nobody carries by none")
    void heldBy() {
        assertThat(position("holder").heldBy()).containsExactly(List.of(new LineName("frame")));
        assertThat(position("motor").heldBy())
                .containsExactly(List.of(new LineName("holder-left")), List.of(new LineName("holder-right")));
        assertThat(position("pedals").heldBy()).isEmpty();
    }

    @Test
    @DisplayName("how full costs are worked out and sold")
    void prices() {
        PriceBook prices = Objects.requireNonNull(catalogue.prices());
        assertThat(prices.labour().of("weld").perHour()).isEqualByComparingTo("60");
        assertThat(prices.labour().of("saw").perHour()).isEqualByComparingTo("40");
        assertThat(prices.lots().of(new PartNumber("FRAME"))).isEqualTo(2);
        assertThat(prices.lots().of(new PartNumber("RAIL"))).isEqualTo(5);
        assertThat(prices.landing().dutyFree()).containsExactly("DE", "PL");
        assertThat(prices.landing().suppliers().get("Bolt Bros"))
                .isEqualTo(new Delivery("Bolt Bros", null, BigDecimal.TEN, new BigDecimal("40"), 4));
        assertThat(prices.profit()).isEqualTo(Profit.margin(new BigDecimal("25")));
        assertThat(prices.partners().get("Far Works"))
                .isNotNull()
                .satisfies(terms -> assertThat(terms.profit()).isEqualTo(Profit.markUp(new BigDecimal("20"))));
        assertThat(prices.rates()).extracting(ExchangeRate::lastDay).containsExactly(LocalDate.of(2026, 1, 31));
        assertThat(prices.called("drive", "de")).isEqualTo("Antrieb");
        assertThat(prices.called("high voltage", "de")).isEqualTo("high voltage");
    }
}

package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Booth;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Sample powders from light to dark: white 92, metal 70, primer 63, grey 54, black 26; labour 1.00 an hour. */
class ColourOrderTest {

    private static final List<String> POWDERS = List.of("PB-WHITE", "PB-METAL", "PB-PRIMER", "PB-GREY", "PB-BLACK");

    private static BoothWays booths(String inBooth) {
        return BoothWays.of(SampleOrders.workshop(SampleShop.costed(inBooth, 0)));
    }

    private static List<Spray> sprays(BoothWays booths, Finish... finishes) {
        List<OvenBatch> batches = new ArrayList<>();
        for (Finish finish : finishes) {
            BatchRow row = SampleOrders.row(SampleShop.part("P-1", SampleShop.coat("0.1")), SampleShop.coat("0.1"), 1);
            batches.add(new OvenBatch(batches.size() + 1, finish, SampleShop.OVEN, List.of(row), List.of()));
        }
        return Sprays.plan(batches, booths, SampleShop.costed("", 0));
    }

    private static Finish of(String... powders) {
        PowderCoat[] coats = new PowderCoat[powders.length];
        for (int i = 0; i < powders.length; i++) {
            coats[i] = SampleShop.coats(powders[i], "1.5", 80);
        }
        return SampleShop.own(String.join("-", powders), coats);
    }

    private static List<String> order(String inBooth, Finish... finishes) {
        BoothWays booths = booths(inBooth);
        return ColourOrder.of(sprays(booths, finishes), booths).sprays().stream()
                .map(Spray::powder)
                .toList();
    }

    @Test
    void from_light_to_dark() {
        assertThat(order("", of("PB-BLACK"), of("PB-GREY"), of("PB-WHITE")))
                .containsExactly("PB-WHITE", "PB-GREY", "PB-BLACK");
    }

    @Test
    void what_is_in_the_booth_begins_where_that_is_cheaper() {
        assertThat(order("PB-GREY", of("PB-BLACK"), of("PB-GREY"), of("PB-WHITE")))
                .containsExactly("PB-GREY", "PB-WHITE", "PB-BLACK");
    }

    @Test
    void a_coat_waits_for_the_one_below_it_though_that_is_darker() {
        assertThat(order("PB-WHITE", of("PB-GREY", "PB-WHITE"))).containsExactly("PB-GREY", "PB-WHITE");
    }

    @Test
    @DisplayName("One run of black at the end rather than one at the beginning and one at the end, for the same money")
    void fewest_runs() {
        assertThat(order("PB-BLACK", of("PB-BLACK"), of("PB-PRIMER", "PB-BLACK")))
                .containsExactly("PB-PRIMER", "PB-BLACK", "PB-BLACK");
    }

    @Test
    @DisplayName(
            "To darker: 20 min of 1.00 an hour and 0.5 kg of white at 8.00; to lighter: 2 × 45 min and 1 kg of black")
    void cost() {
        ChangeOverCost costs = booths("").costs();
        assertThat(costs.between("PB-WHITE", "PB-BLACK").cost())
                .isBetween(new BigDecimal("4.333"), new BigDecimal("4.334"));
        assertThat(costs.between("PB-BLACK", "PB-WHITE").cost()).isEqualByComparingTo("9.5");
    }

    @Test
    void a_powder_of_unknown_lightness_is_cleaned_for_to_the_last_speck() {
        assertThat(booths("").costs().between("PB-WHITE", "PB-NEW").toDarker()).isFalse();
    }

    @Test
    void what_a_second_booth_holds_stays_there_and_costs_no_change() {
        CoatingShop one = SampleShop.costed("PB-BLACK", 0);
        List<Booth> booths = List.of(one.booths().get(0), new Booth("second", "Second", "PB-WHITE"));
        CoatingShop two = new CoatingShop(
                one.ovens(),
                booths,
                one.coaters(),
                one.masks(),
                one.powders(),
                one.ownCostPerM2(),
                one.changeOvers(),
                one.time());
        Finish[] finishes = {of("PB-BLACK"), of("PB-WHITE")};
        SampleOrders order = SampleOrders.order("BL-1");
        for (Finish finish : finishes) {
            order.with(1, SampleShop.part("P-" + finish.coats().get(0).powder(), SampleShop.coat("0.1")), finish);
        }
        CoatPlan plan = CoatPlanner.plan(List.of(order.bill()), SampleOrders.catalogue(two, Map.of(), finishes));
        assertThat(plan.changeOvers()).isZero();
        assertThat(plan.runs()).extracting(PowderRun::booth).containsExactlyInAnyOrder("booth", "second");
    }

    @Test
    void thirteen_sprays_are_ordered_well_without_a_proof() {
        BoothWays booths = booths("PB-BLACK");
        List<Finish> finishes = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            finishes.add(of("PB-" + i));
        }
        finishes.add(of("PB-0", "PB-5"));
        ColourOrder.Found found = ColourOrder.of(sprays(booths, finishes.toArray(Finish[]::new)), booths);
        assertThat(found.shortest()).isFalse();
        assertThat(found.sprays()).hasSize(15);
        assertThat(turned(found.sprays())).isFalse();
    }

    @Property(tries = 150)
    @Label(
            "No order of up to six sprays that any permutation gives is cheaper, and none takes a coat before the one below")
    void shortest(@ForAll long seed) {
        Random random = new Random(seed);
        BoothWays booths = booths(POWDERS.get(random.nextInt(5)));
        Finish[] finishes = IntStream.range(0, 1 + random.nextInt(3))
                .mapToObj(i -> IntStream.rangeClosed(0, random.nextInt(2))
                        .mapToObj(coat -> POWDERS.get(random.nextInt(5)))
                        .toArray(String[]::new))
                .map(ColourOrderTest::of)
                .toArray(Finish[]::new);
        List<Spray> sprays = sprays(booths, finishes);
        List<Spray> found = ColourOrder.of(sprays, booths).sprays();
        assertThat(turned(found)).isFalse();
        assertThat(NearColourOrder.cost(found, booths)).isEqualTo(least(new ArrayList<>(), sprays, booths));
        assertThat(NearColourOrder.cost(new NearColourOrder(sprays, booths).found(), booths))
                .isGreaterThanOrEqualTo(NearColourOrder.cost(found, booths));
    }

    private static boolean turned(List<Spray> order) {
        return IntStream.range(0, order.size())
                .anyMatch(i -> order.subList(i, order.size()).stream().anyMatch(order.get(i)::follows));
    }

    private static long least(List<Spray> before, List<Spray> left, BoothWays booths) {
        if (left.isEmpty()) {
            return NearColourOrder.cost(before, booths);
        }
        long least = Long.MAX_VALUE;
        for (Spray next : left) {
            if (left.stream().noneMatch(next::follows)) {
                List<Spray> with = new ArrayList<>(before);
                with.add(next);
                List<Spray> without = new ArrayList<>(left);
                without.remove(next);
                least = Math.min(least, least(with, without, booths));
            }
        }
        return least;
    }
}

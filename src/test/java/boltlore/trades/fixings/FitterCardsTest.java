package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.measure.PartNumber;
import boltlore.report.Block;
import boltlore.report.Cell;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.Phrases;
import boltlore.report.Picture;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.drawing.Mark;
import boltlore.report.text.TextWriter;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.OnHold;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The fitter's cards")
class FitterCardsTest {

    private static Report cards(String order) {
        return new FitterCards(Demo.kit(order)).report();
    }

    /** All but the pages of bag cards. */
    private static List<Page> stages(String order) {
        return cards(order).pages().stream()
                .filter(page -> !cautions(page).isEmpty())
                .toList();
    }

    private static List<String> cautions(Page page) {
        return page.blocks().stream()
                .flatMap(block -> block instanceof Note note ? Stream.of(note.key()) : Stream.of())
                .filter(key -> Demo.kit("bl-1001").workshop().cautions().containsKey(key))
                .toList();
    }

    private static Page page(String order, String name) {
        return stages(order).stream()
                .filter(page -> page.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String words(List<? extends Block> blocks) {
        Report report = Report.named("part", "Part").page(Page.named("Part")).build();
        Page all = new Page("Part", "Part", "en", report.pages().get(0).print(), List.copyOf(blocks));
        Report shown = new Report(
                "part", "Part", "", "", null, "en", report.findings(), List.of(), List.of(all), report.data());
        return new TextWriter(400).text(shown).replaceAll("[\\s|+=-]+", " ");
    }

    private static BoltWords bolts(String language) {
        return new BoltWords(Phrases.of(FitterCards.class, "cards", language), language);
    }

    @ParameterizedTest
    @CsvSource({
        "bl-1001, The rows of a card are not the order of work",
        "bl-1011, Die Zeilen einer Karte sind nicht die Reihenfolge",
        "bl-1012, Les lignes d'une fiche ne sont pas"
    })
    void each_begins_with_what_comes_first_in_its_language(String order, String says) {
        assertThat(stages(order)).hasSizeGreaterThan(3).allSatisfy(page -> {
            assertThat(cautions(page)).first().isEqualTo("fitters-order");
            assertThat(words(page.blocks())).contains(says);
        });
    }

    @Test
    void each_says_how_vehicles_are_lifted_bolts_tightened_and_high_voltage_is_worked_on_once() {
        assertThat(stages("bl-1001"))
                .allSatisfy(page -> assertThat(cautions(page))
                        .contains("torques", "high-voltage-work", "lifting-vehicle")
                        .doesNotHaveDuplicates());
    }

    /** The cradle hangs on self-locking nuts; the propshaft is screwed into threads, with a fluid that locks and takes nothing. */
    @ParameterizedTest
    @CsvSource({
        "bl-1001, cradle, ', in each with what the nut takes on top;'",
        "bl-1011, cradle, ', in jeder dazu, was die Mutter braucht;'",
        "bl-1012, cradle, ', en ajoutant à chacune ce que prend l''écrou;'"
    })
    void rounds_count_what_a_self_locking_nut_takes(String order, String subject, String says) {
        KitInWork kit = Demo.kit(order);
        String language = kit.order().language();
        assertThat(FixingsTrade.joints(kit))
                .filteredOn(joint -> joint.stages().isPresent())
                .anySatisfy(joint -> assertThat(joint.subject()).isEqualTo(subject))
                .allSatisfy(joint -> assertThat(
                                bolts(language).how(joint).contains(says.substring(0, says.indexOf(';'))))
                        .as(joint.subject())
                        .isEqualTo(joint.prevailingNm() != null));
    }

    @Test
    void coolant_is_warned_of_where_it_is_filled_and_nowhere_else() {
        assertThat(stages("bl-1001"))
                .allSatisfy(page -> assertThat(cautions(page).contains("coolant"))
                        .as(page.name())
                        .isEqualTo(words(page.blocks()).contains("FL COOL")))
                .anySatisfy(page -> assertThat(cautions(page)).contains("coolant"));
    }

    /** The tipper pick-up has hydraulics and no air conditioning, the van refrigerant and no hydraulics. */
    @Test
    void hydraulics_warn_of_oil_under_pressure_and_refrigerant_is_warned_of_where_it_is_fitted_alone() {
        assertThat(stages("bl-2001"))
                .anySatisfy(page -> assertThat(cautions(page)).contains("hydraulic-oil"))
                .allSatisfy(page -> assertThat(cautions(page)).doesNotContain("pressure"));
        assertThat(stages("bl-1001"))
                .anySatisfy(page -> assertThat(cautions(page)).contains("pressure"))
                .allSatisfy(page -> assertThat(cautions(page)).doesNotContain("hydraulic-oil"));
        assertThat(Demo.bill("bl-2001").resolved().kit().cautionsOn("bill"))
                .contains("hydraulic-oil")
                .doesNotContain("pressure");
    }

    @Test
    void a_card_that_fits_battery_modules_says_how_their_filled_box_is_lifted() {
        assertThat(stages("bl-1001"))
                .filteredOn(page -> words(page.blocks()).contains("BM 44"))
                .hasSize(2)
                .allSatisfy(page -> assertThat(cautions(page)).contains("lift-gear", "lifting-eye"));
        assertThat(cautions(page("bl-1001", "Cabin"))).doesNotContain("lift-gear", "lifting-eye");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1002", "bl-1012", "bl-2002"})
    void what_an_order_holds_back_stands_as_held_with_the_counts_of_the_contents_list_and_in_no_row(String order) {
        KitInWork kit = Demo.kit(order);
        List<OnHold> held = PickingTrade.list(kit).onHold();
        assertThat(held).isNotEmpty();
        assertThat(heldRows(order)).containsExactlyInAnyOrderElementsOf(held);
        String tables = cards(order).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .filter(block -> block instanceof Table table && table.name().equals("card"))
                .map(block -> words(List.of(block)))
                .collect(Collectors.joining());
        SortedMap<PartNumber, BigDecimal> left = PickingTrade.sure(kit).quantities();
        assertThat(held.stream().map(each -> each.part().number()).filter(part -> !left.containsKey(part)))
                .isNotEmpty()
                .allSatisfy(part ->
                        assertThat(tables).doesNotContain(" " + part.text().replace('-', ' ') + " "));
    }

    private static List<OnHold> heldRows(String order) {
        KitInWork kit = Demo.kit(order);
        HeldParts parts = new HeldParts(kit, Phrases.of(FitterCards.class, "cards", "en"));
        return kit.workshop().stages().stream()
                .flatMap(stage -> parts.of(stage).stream())
                .toList();
    }

    /** M12, class 8.8, 84 Nm at a friction of 0.12 (VDI 2230 tables); ISO 2320 lets the nut take 15.5 Nm at most, from memory. */
    @ParameterizedTest
    @CsvSource({
        "bl-1001, '84 Nm, wrench at most 99.5 Nm'",
        "bl-1011, '84 Nm, Schlüssel höchstens 99,5 Nm'",
        "bl-1012, '84 Nm, clé à 99,5 Nm au plus'"
    })
    void the_wrench_is_set_higher_where_a_self_locking_thread_takes_some_of_it(String order, String says) {
        KitInWork kit = Demo.kit(order);
        assertThat(new JointsOfKit(kit.plan(), kit.bill()).all())
                .extracting(joint -> bolts(kit.order().language()).torque(joint))
                .contains(says);
    }

    @Test
    void a_plain_thread_has_its_torque_alone() {
        assertThat(bolts("en").torque(Jointed.with("30").joint())).isEqualTo("24.6 Nm");
        assertThat(bolts("en").torque(Jointed.with("30").selfLocking("6").joint()))
                .isEqualTo("24.6 Nm, wrench at most 30.6 Nm");
    }

    @Test
    void a_joint_by_angle_has_the_snug_torque_and_the_angle_in_the_place_of_a_torque() {
        BoltedJoint joint =
                Jointed.with("30").stages(List.of("10", "20"), List.of("90")).joint();
        assertThat(bolts("en").torque(joint)).isEqualTo("20 Nm, then 90°");
        assertThat(bolts("de").torque(joint)).isEqualTo("20 Nm, dann 90°");
        assertThat(bolts("fr").torque(joint)).isEqualTo("20 Nm, puis 90°");
    }

    /** FAA AC 43.13-1B, 7-40: the running torque of a self-locking nut is measured and added. */
    @ParameterizedTest
    @CsvSource({
        "bl-1001, Measure what it takes, neither oiled nor cleaned, changes the friction, nothing on faces that carry current",
        "bl-1011, Messen was sie braucht, weder geölt noch gereinigt, ändert die Reibung, nichts auf stromführende Flächen",
        "bl-1012, Mesurer ce qu, ni huilés ni nettoyés, change le frottement, rien sur les faces qui conduisent le courant"
    })
    void what_a_row_cannot_say_of_tightening_stands_once_on_the_card(
            String order, String running, String threads, String lock, String terminals) {
        assertThat(stages(order))
                .anySatisfy(page -> assertThat(words(page.blocks()).replace(",", ""))
                        .containsOnlyOnce(running)
                        .containsOnlyOnce(threads)
                        .containsOnlyOnce(lock));
        assertThat(cards(order).pages())
                .anySatisfy(page -> assertThat(words(page.blocks())).contains(terminals));
    }

    @Test
    void a_joint_without_nut_or_thread_lock_explains_neither() {
        assertThat(bolts("en").explained(List.of(Jointed.with("30").joint())))
                .containsExactly("Torques hold for threads as delivered, neither oiled nor cleaned.");
        assertThat(bolts("en").explained(List.of())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "bl-1001, 'M8 stud: Contactor box', 'terminal minus', '[(]HV CB[0-9]+[)]: '",
        "bl-1011, 'Bolzen M8: Schützkasten', 'Anschluss Minus', '\\bvon Schützkasten'",
        "bl-1012, 'goujon M8\u00A0: Boîtier de contacteurs', 'borne moins', '[a-zé]: [0-9]'"
    })
    void a_stud_is_named_in_the_cards_language_beside_the_lug_that_goes_on_it(
            String order, String stud, String port, String never) {
        List<String> tables = cards(order).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .filter(block -> block instanceof Table table && table.name().equals("card"))
                .map(block -> words(List.of(block)))
                .toList();
        assertThat(tables)
                .anySatisfy(says -> assertThat(says).contains(stud).contains(port))
                .allSatisfy(says -> assertThat(says).doesNotContainPattern(never));
    }

    /** A set has other washers than the plain bolt of its size, M8 × 20 here: either for the other leaves an earth point bad. */
    @ParameterizedTest
    @CsvSource({
        "bl-1001, Earth bolt set M8 (FX-E8)",
        "bl-1011, Erdungsschraubensatz M8 (FX-E8)",
        "bl-1012, Jeu de vis de masse M8 (FX-E8)"
    })
    void a_set_is_called_by_its_name_and_never_added_to_plain_bolts(String order, String name) {
        List<BoltedJoint> joints = new JointsOfKit(Demo.kit(order).plan(), PickingTrade.sure(Demo.kit(order))).all();
        BoltWords words = bolts(Demo.order(order).language());
        assertThat(joints).anySatisfy(joint -> assertThat(words.size(joint)).isEqualTo(name));
        assertThat(joints)
                .allSatisfy(joint -> assertThat(words.size(joint).equals(name))
                        .isEqualTo(joint.bolt().number().text().equals("FX-E8")));
        assertThat(lettered(order)).anySatisfy(line -> assertThat(line.text()).contains(" × " + name));
    }

    /** A header tank with its cap and a vacuum set are built up at the vehicle: bags hold what is in them. */
    @ParameterizedTest
    @CsvSource({"bl-1001, PV-VS, CO-HDR", "bl-1011, PV-VS, CO-HDR", "bl-2001, ST-VS, CO-HDR"})
    void a_card_names_what_bags_hold_and_no_set_that_lies_in_none(String order, String vacuum, String tank) {
        List<String> held = PickingTrade.sure(Demo.kit(order))
                .picked()
                .map(item -> item.part().number().text())
                .toList();
        String cards = stages(order).stream().map(page -> cells(page)).collect(Collectors.joining());
        assertThat(held).doesNotContain(vacuum, tank);
        assertThat(cards).doesNotContain(" " + vacuum, " " + tank).contains("HV-EB16");
    }

    private static String cells(Page page) {
        return page.blocks().stream()
                .filter(block -> block instanceof Table table && table.name().equals("card"))
                .map(Object::toString)
                .collect(Collectors.joining());
    }

    /** On the cards of bags. */
    private static List<Mark.Lettering> lettered(String order) {
        return cards(order).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .flatMap(
                        block -> block instanceof Picture picture ? picture.drawing().marks().stream() : Stream.empty())
                .flatMap(mark -> mark instanceof Mark.Lettering words ? Stream.of(words) : Stream.empty())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1011", "bl-1012"})
    void each_row_says_what_it_fits_also_where_a_position_has_two_joints(String order) {
        List<Table> cards = cards(order).pages().stream()
                .flatMap(Page::tables)
                .filter(table -> table.name().equals("card"))
                .toList();
        assertThat(cards)
                .isNotEmpty()
                .allSatisfy(card ->
                        assertThat(card.rows()).noneMatch(row -> row.cells().get(card.column("fit")) == Cell.EMPTY));
    }

    @Test
    void each_part_number_stands_in_a_column_of_its_own_where_no_line_ends_within_it() {
        List<Table> cards = cards("bl-1001").pages().stream()
                .flatMap(Page::tables)
                .filter(table -> table.name().equals("card"))
                .toList();
        assertThat(cards)
                .isNotEmpty()
                .allSatisfy(card -> assertThat(card.rows())
                        .noneMatch(row -> row.cells().get(card.column("fit")) instanceof Cell.Words says
                                && says.text().contains("×"))
                        .anyMatch(row -> row.cells().get(card.column("parts")) instanceof Cell.Words says
                                && says.text().matches("[\\d.,]+\u00A0(×|[a-z]+)\u00A0[A-Z0-9]+(-[A-Z0-9]+)+.*")));
    }

    @Test
    void no_line_of_a_bags_card_is_lettered_too_small_to_be_read() {
        List<Mark.Lettering> lines = lettered("bl-1001").stream()
                .filter(words -> words.text().contains(" Nm"))
                .toList();
        assertThat(lines)
                .hasSizeGreaterThan(20)
                .allSatisfy(words -> assertThat(words.heightMm()).isGreaterThanOrEqualTo(2.2));
    }

    @Test
    void high_voltage_cables_and_lugs_go_by_their_drawing_and_a_hose_says_nothing() {
        String floor = words(page("bl-1001", "Under the floor").blocks());
        assertThat(floor)
                .containsPattern("Cable, battery to junction box [^:]* by its drawing")
                .containsPattern("Spare cable lugs [^:]* by its drawing")
                .doesNotContainPattern("hose: [^:]* by its drawing");
    }
}

package boltlore.trades.fixings;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.Document;
import boltlore.catalogue.Position;
import boltlore.catalogue.Stage;
import boltlore.measure.Digits;
import boltlore.order.Order;
import boltlore.proof.fits.Terminals.Terminal;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Phrases;
import boltlore.report.PrintSetup;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.Signatures;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.PickingTrade;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The fitter's cards, one for each fit stage in the order's language: what is fitted where, from which bag, with which
 * bolts, how they are tightened, and what can hurt. No cost stands in them; they go with the kit.
 */
final class FitterCards {

    static final String FILE = "fitters-cards";

    /**
     * A row of a card: a position with what is fitted there, and one of its joints.
     *
     * @param fits empty in all but a position's first row; of a lug what it ends
     * @param parts numbers of what is fitted there; empty in all but a position's first row
     * @param joint null where nothing is bolted
     * @param terminal a lug of it on a stud, or null
     * @param live whether it is a high-voltage cable or what its ends are made of
     */
    private record Row(
            Position position,
            String fits,
            String parts,
            @Nullable BoltedJoint joint,
            @Nullable Terminal terminal,
            boolean live) {}

    private final KitInWork kit;
    private final Bill sure;
    private final HeldParts held;
    private final List<BoltedJoint> joints;
    private final LiveCables cables;
    private final List<Terminal> terminals;
    private final String language;
    private final Phrases phrases;
    private final BoltWords words;

    FitterCards(KitInWork kit) {
        this.kit = kit;
        this.sure = PickingTrade.sure(kit);
        this.joints = new JointsOfKit(kit.plan(), sure).all();
        this.cables = LiveCables.of(kit.bill());
        this.terminals = TerminalsPage.of(kit);
        this.language = kit.order().language();
        this.phrases = Phrases.of(FitterCards.class, "cards", language);
        this.words = new BoltWords(phrases, language);
        this.held = new HeldParts(kit, phrases);
    }

    /** Whether anything is fitted: a kit that lacks everything has no card. */
    static boolean any(KitInWork kit) {
        return !kit.bill().items().isEmpty();
    }

    Report report() {
        ReportBuilder report = Report.named(FILE, phrases.say("title"))
                .about(phrases.say("order") + " " + kit.order().name())
                .by(kit.workshop().name())
                .in(language);
        if (kit.order().placed() != null) {
            report.dated(kit.order().placed());
        }
        Map<String, Map<Position, List<Item>>> stages = FitOrder.byStage(kit.bill(), sure, kit.family());
        int number = 0;
        for (Stage stage : kit.workshop().stages()) {
            Map<Position, List<Item>> positions = stages.get(stage.name());
            if (positions != null) {
                number++;
                report.page(card(stage, positions, number + "/" + stages.size()));
            }
        }
        new BagCards(kit, joints, phrases, words)
                .pages(print(phrases.say("bagCards")))
                .forEach(report::page);
        return report.build();
    }

    private PrintSetup print(String what) {
        return PrintSetup.PORTRAIT
                .withCount(new PrintSetup.PageCount(phrases.say("pageWord"), phrases.say("pageOf")))
                .withFooter(kit.workshop().name() + " · " + phrases.say("order") + " "
                        + kit.order().name() + " · " + what);
    }

    private PageBuilder card(Stage stage, Map<Position, List<Item>> positions, String number) {
        String says = stage.says().in(language);
        PageBuilder page = Page.named(says).in(language).print(print(says));
        page.title(phrases.say("card", number, says)).add(head());
        new CardCautions(kit, joints, phrases).on(page, positions);
        if (!positions.isEmpty()) {
            page.add(rows(positions));
            explained(page, positions);
        }
        held.on(page, stage);
        documents(page, positions);
        return page.add(new Signatures(List.of(phrases.say("fitted"), phrases.say("checked")), phrases.say("date")));
    }

    /** What several rows of a card would say each: it stands once, below them. */
    private void explained(PageBuilder page, Map<Position, List<Item>> positions) {
        List<String> explained = new ArrayList<>(words.explained(joints.stream()
                .filter(joint -> positions.containsKey(joint.position()))
                .toList()));
        if (positions.keySet().stream()
                .anyMatch(position -> lugs(position).findAny().isPresent())) {
            explained.add(0, phrases.say("terminals"));
        }
        if (!explained.isEmpty()) {
            page.note(String.join(" ", explained));
        }
    }

    private Stream<Terminal> lugs(Position position) {
        return terminals.stream().filter(terminal -> terminal.lugAt().equals(position.name()));
    }

    private ParticularsBuilder head() {
        Order order = kit.order();
        ParticularsBuilder says = Particulars.named("order")
                .say("order", phrases.say("order"), order.name())
                .say("vehicle", phrases.say("vehicle"), kit.family().says().in(language));
        return order.chassis().isEmpty()
                ? says.leave("chassis", phrases.say("chassis"))
                : says.say("chassis", phrases.say("chassis"), order.chassis());
    }

    private TableBuilder rows(Map<Position, List<Item>> positions) {
        return TableSpec.<Row>named("card")
                .text("fit", phrases.say("fit"), 30, this::said)
                .text("parts", phrases.say("part"), 22, row -> row.parts().isEmpty() ? null : row.parts())
                .text("bag", phrases.say("bag"), 14, this::bag)
                .text("bolts", phrases.say("bolts"), 40, this::bolts)
                .text("torque", phrases.say("torque"), 18, this::torque)
                .text("how", phrases.say("how"), 34, this::how)
                .box(Column.tick("done", phrases.say("done")))
                .code("position", row -> row.position().name().text())
                .of(positions.entrySet().stream()
                        .flatMap(each -> rows(each.getKey(), each.getValue()))
                        .toList());
    }

    private Stream<Row> rows(Position position, List<Item> items) {
        List<BoltedJoint> here = joints.stream()
                .filter(joint -> joint.position().equals(position))
                .toList();
        Row first = new Row(
                position,
                position.says().in(language),
                parts(items),
                here.isEmpty() ? null : here.get(0),
                null,
                here.isEmpty() && items.stream().anyMatch(cables::has));
        return Stream.of(
                        Stream.of(first),
                        here.stream().skip(1).map(joint -> new Row(position, "", "", joint, null, false)),
                        lugs(position).map(terminal -> new Row(position, lug(terminal), "", null, terminal, false)))
                .flatMap(each -> each);
    }

    /** Further bolts of one position say whose they are: no row is read by the one above it. */
    private String said(Row row) {
        return row.fits().isEmpty() ? phrases.say("again", row.position().says().in(language)) : row.fits();
    }

    /** What its drawing says holds for the ends of a high-voltage cable too: nobody tightens one by feel. */
    private @Nullable String torque(Row row) {
        if (row.joint() != null) {
            return words.torque(row.joint());
        }
        if (row.terminal() != null && row.terminal().stud().torqueNm() != null) {
            return words.newtonMetres(row.terminal().stud().torqueNm());
        }
        return row.live() ? phrases.say("torqueUnknown") : null;
    }

    private @Nullable String bolts(Row row) {
        Terminal terminal = row.terminal();
        return terminal != null
                ? phrases.say(
                        "terminal",
                        terminal.stud().designation(),
                        terminal.device().in(language),
                        port(terminal.port()))
                : row.joint() == null ? null : words.bolts(row.joint());
    }

    private String lug(Terminal terminal) {
        return phrases.say("lug", terminal.lug().in(language));
    }

    /** Words of the trade in the card's language; any other name as its data give it. */
    private String port(String name) {
        return phrases.find("port." + name).orElse(name);
    }

    private @Nullable String how(Row row) {
        return row.terminal() != null
                ? phrases.say("terminalHow")
                : row.joint() == null ? null : words.how(row.joint());
    }

    private @Nullable String bag(Row row) {
        String bag = row.position().bag();
        if (row.terminal() != null) {
            return phrases.say("noBag");
        }
        return row.fits().isEmpty() || bag.isEmpty()
                ? null
                : kit.catalogue().shipping().bagSays(bag, kit.workshop(), language);
    }

    /** '1 × PV-BX-R; 2 × PV-RB-L': of what is asked for by it, only what is no bolt, nut or washer. */
    private String parts(List<Item> items) {
        return items.stream()
                .flatMap(this::inBags)
                .filter(item -> item.origin() instanceof Origin.OwnLine || !isFixing(item))
                .map(this::one)
                .collect(Collectors.joining(phrases.say("next")));
    }

    /** What of it lies in a bag or crate by its own number, as the packing list has it: of a built-up set what is in it. */
    private Stream<Item> inBags(Item item) {
        List<Item> picked = item.all().filter(Item::picked).toList();
        return picked.isEmpty() || picked.contains(item)
                ? Stream.of(item)
                : picked.stream().filter(each -> !isFixing(each));
    }

    private boolean isFixing(Item item) {
        return item.part().fixing() != null
                || joints.stream()
                        .flatMap(joint -> joint.with().stream())
                        .anyMatch(
                                with -> with.part().number().equals(item.part().number()));
    }

    /** '2 × PV-RB-L', in one line. */
    private String one(Item item) {
        String unit = item.part().unit().equals("each")
                ? "\u00A0×\u00A0"
                : "\u00A0" + item.part().unit() + "\u00A0";
        return phrases.figures(Digits.plain(item.quantity()))
                + unit
                + item.part().number();
    }

    /** Sketches, photos and instructions of what is fitted here, by name: their files go with the cards. */
    private void documents(PageBuilder page, Map<Position, List<Item>> positions) {
        List<String> says = Stream.concat(
                        positions.keySet().stream().flatMap(position -> position.documents().stream()),
                        positions.values().stream()
                                .flatMap(List::stream)
                                .flatMap(item -> item.part().upkeep().documents().stream()))
                .filter(document -> document.kind() != Document.Kind.CERTIFICATE)
                .map(document -> document.says().in(language)
                        + (document.number() == null ? "" : ", " + document.number())
                        + (document.file() == null ? "" : " (" + document.file() + ")"))
                .distinct()
                .toList();
        if (!says.isEmpty()) {
            page.heading(phrases.say("documents")).note("documents", String.join(phrases.say("next"), says) + ".");
        }
    }
}

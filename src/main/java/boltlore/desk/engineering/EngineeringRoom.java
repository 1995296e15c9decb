package boltlore.desk.engineering;

import boltlore.answers.Because;
import boltlore.answers.PartSearch;
import boltlore.answers.WhereUsed;
import boltlore.answers.WhyIn;
import boltlore.answers.WhyNotIn;
import boltlore.book.db.AsBuilt;
import boltlore.book.orders.KitsAtHand;
import boltlore.book.orders.OrderDesk;
import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Part;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Names;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Sentences;
import boltlore.desk.frame.Stretch;
import boltlore.desk.frame.Typed;
import boltlore.desk.frame.Workshop;
import boltlore.desk.sheets.Kits;
import boltlore.faults.Outcome;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The room that looks after the catalogue: its parts, where they are used, and whether every order is sound. */
public final class EngineeringRoom implements Room {

    private static final int MOST = 200;

    private final Workshop workshop;
    private final KitsAtHand kits;
    private final ProofPages proofs;
    private final RecallPages recalls;

    public EngineeringRoom(Workshop workshop, KitsAtHand kits) {
        this.workshop = workshop;
        this.kits = kits;
        this.proofs = new ProofPages(workshop);
        this.recalls = new RecallPages(workshop);
    }

    @Override
    public Role role() {
        return Role.ENGINEER;
    }

    @Override
    public String path() {
        return "/engineering";
    }

    @Override
    public String says() {
        return "Engineering";
    }

    @Override
    public void open(Doors doors) {
        doors.look("/engineering", this::search);
        doors.look("/engineering/part", this::part);
        doors.look("/engineering/why", this::why);
        proofs.open(doors);
        recalls.open(doors);
    }

    @Override
    public void ahead(LocalDate today) {
        proofs.ahead();
    }

    private Catalogue catalogue() {
        return workshop.bench().catalogue();
    }

    private Answer search(Call call) {
        String said = call.said("words");
        List<String> words = Arrays.stream(said.split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        List<Part> found = PartSearch.find(catalogue(), words);
        return Answer.page(
                "Parts of the catalogue",
                "engineering/search.jte",
                new Search(
                        workshop.names(),
                        said,
                        Stretch.of(
                                        found,
                                        call,
                                        MOST,
                                        "/engineering?words=" + URLEncoder.encode(said, StandardCharsets.UTF_8))
                                .map(EngineeringRoom::row)));
    }

    private static Row row(Part part) {
        Buying buying = part.buying();
        return new Row(
                part.number().text(),
                part.revision(),
                part.name().english(),
                part.source().name().toLowerCase(Locale.ROOT),
                buying == null ? "" : buying.supplier());
    }

    private Answer part(Call call) {
        Part part = catalogue().parts().get(new PartNumber(call.said("part")));
        if (part == null) {
            return new Answer.Missing("There is no part '" + call.said("part") + "' in the catalogue.");
        }
        String number = part.number().text();
        return workshop.book()
                .read(reading -> Answer.page(
                        number + " " + part.name().english(),
                        "engineering/part.jte",
                        new OfPart(
                                workshop.names(),
                                number,
                                facts(part),
                                WhereUsed.find(catalogue(), part.number()),
                                PartSearch.history(catalogue(), part),
                                part.upkeep().notes(),
                                RecallPages.kits(
                                        reading,
                                        reading.asBuilt()
                                                .holding(new AsBuilt.Asked(number, "", "", "", "", "", ""))))));
    }

    private static Map<String, String> facts(Part part) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Revision", part.revision());
        facts.put("Source", part.source().name().toLowerCase(Locale.ROOT));
        facts.put("Unit", part.unit());
        BigDecimal mass = part.massKg();
        if (mass != null) {
            facts.put("Mass", Digits.plain(mass) + " kg");
        }
        facts.put("Lead time", part.leadDays() + (part.leadDays() == 1 ? " day" : " days"));
        facts.put("Bin", part.bin().isEmpty() ? "none" : part.bin());
        Buying buying = part.buying();
        if (buying != null) {
            facts.put("Supplier", buying.supplier() + ", " + buying.orderCode());
        }
        Drawing drawing = part.making().drawing();
        if (drawing != null) {
            facts.put("Drawing", drawing.number() + ", issue " + drawing.issue());
        }
        if (part.tracked() != null) {
            facts.put(
                    "Written down",
                    switch (part.tracked()) {
                        case SERIAL -> "serial number";
                        case LOT -> "lot";
                    });
        }
        return facts;
    }

    /** Why a part is in the kit of an order, or what would bring it in. */
    private Answer why(Call call) {
        Typed typed = new Typed(call);
        String order = typed.text("order", "Order", TextShape.ORDER_NAME);
        String number = typed.text("part", "Part", TextShape.PART_NUMBER);
        PartNumber part = new PartNumber(number);
        Outcome<KitInWork> kit = typed.sound().then(ok -> kit(order, call));
        if (!(kit instanceof Outcome.Sound<KitInWork> sound)) {
            return new Answer.Missing(Sentences.missing(kit.faults()));
        }
        KitInWork of = sound.value();
        boolean in = of.bill().resolved().kit().contains(part);
        BigDecimal quantity = of.bill().resolved().kit().quantities().get(part);
        List<Because> reasons = in
                ? WhyIn.explain(of.plan(), of.bill().resolved().kit(), part)
                : WhyNotIn.explain(of.plan(), of.bill().resolved().kit(), of.choices(), part);
        List<Reason> flat = new ArrayList<>();
        reasons.forEach(reason -> flatten(reason, 0, flat));
        return Answer.page(
                (in ? "Why " + number + " is in " : "What would bring " + number + " into ") + order,
                "engineering/why.jte",
                new Why(workshop.names(), order, number, in, quantity == null ? "" : Digits.plain(quantity), flat));
    }

    /** As it is frozen, or as it would be made of what the order says now. */
    private Outcome<KitInWork> kit(String order, Call call) {
        return workshop.book()
                .read(reading -> OrderDesk.standing(reading, order))
                .then(standing -> standing.state().frozen()
                        ? workshop.book().read(reading -> kits.of(reading, order, call.today()))
                        : new Kits(workshop).of(standing, call.today()));
    }

    private static void flatten(Because reason, int depth, List<Reason> flat) {
        flat.add(new Reason(reason.sentence(), Math.min(depth, 4)));
        reason.further().forEach(further -> flatten(further, depth + 1, flat));
    }

    /** Parts that have all words. */
    public record Search(Names names, String words, Stretch<Row> parts) {}

    /** One part. */
    public record Row(String number, String revision, String name, String source, String supplier) {}

    /** All of a part. */
    public record OfPart(
            Names names,
            String number,
            Map<String, String> facts,
            List<String> used,
            List<String> history,
            String notes,
            List<RecallPages.Kit> kits) {}

    /** Reasons, each with how deep it lies below another. */
    public record Why(Names names, String order, String part, boolean in, String quantity, List<Reason> reasons) {}

    /**
     * A reason in a sentence.
     *
     * @param depth 0 for one that stands by itself, up to 4
     */
    public record Reason(String says, int depth) {}
}

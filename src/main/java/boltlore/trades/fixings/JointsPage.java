package boltlore.trades.fixings;

import boltlore.bill.Item;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.Workshop;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.DocumentsTable;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.fixings.FixingsMaker.KitFixings;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The first page: every joint with its bolts and torque, and what was found. */
final class JointsPage {

    private static final String TABLES =
            "A torque holds for its table, edition, friction and class only: for threads as"
                    + " delivered, neither oiled nor cleaned. A liquid thread lock changes the friction; follow its maker.";

    /** FAA AC 43.13-1B, 7-40. */
    private static final String SELF_LOCKING =
            "A self-locking nut turns hard before it clamps: measure what it takes with the bolt's end through it, and"
                    + " add that to the torque. Above what stands under 'Self-locking' take another nut.";

    private static final String IN_STAGES =
            "In stages: each round goes over all bolts of the joint in its order before the next begins. An angle is counted"
                    + " from the snug joint: mark head and part, and never go back to make up for turning too far.";

    private static final int LETTERS = 26;

    private JointsPage() {}

    private static TableSpec<BoltedJoint> spec(KitFixings fixings, String language) {
        TableSpec<BoltedJoint> spec = TableSpec.<BoltedJoint>named("joints")
                .text("what", "Joint, what is bolted", 56, joint -> what(joint, language));
        return torques(spec.quantity("quantity", "Bolts", "", BoltedJoint::quantity)
                        .text("size", "Size, class", 18, joint -> size(joint, language))
                        .decimal("torque", "Torque", "Nm", 1, joint -> ofTorque(joint, BoltedJoint::torqueNm)))
                .text("table", "Table", 5, joint -> ofTorque(joint, of -> mark(of, fixings)))
                .text("washers-and-nuts", "Washers and nuts", 44, joint -> with(joint, language))
                .text("how", "Thread lock, stages", 40, joint -> how(joint, language))
                .text("to-sign", "To sign", 8, JointsPage::sign)
                .besideThePaper()
                .text("bolt", "Part", 12, joint -> joint.bolt().number().text())
                .said("joint", "Joint", 26, BoltedJoint::name)
                .said("bolted", "What is bolted", 30, BoltedJoint::held)
                .decimal(
                        "friction",
                        "Friction",
                        "",
                        2,
                        joint -> ofTorque(joint, of -> of.fixing().friction()))
                .said("thread-lock", "Thread lock", 30, BoltedJoint::securedBy)
                .text("stages", "In stages", 34, joint -> stages(joint, language))
                .text("torque-table", "Torque table", 40, joint -> ofTorque(joint, BoltedJoint::torqueFrom))
                .text("because", "Note", 38, BoltedJoint::because)
                .code("position", joint -> joint.position().name().text());
    }

    /** How it is kept from coming loose, and in which rounds it is tightened. */
    private static @Nullable String how(BoltedJoint joint, String language) {
        String stages = stages(joint, language);
        String secured = joint.securedBy().in(language);
        return stages == null
                ? secured
                : Stream.of(secured, stages).filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    }

    /** No column where every joint is tightened in one go. */
    static TableSpec<BoltedJoint> inStages(TableSpec<BoltedJoint> spec, KitFixings fixings, String language) {
        return staged(fixings) ? spec.text("stages", "In stages", 34, joint -> stages(joint, language)) : spec;
    }

    private static boolean staged(KitFixings fixings) {
        return fixings.joints().stream().anyMatch(joint -> joint.stages().isPresent());
    }

    /** '20 Nm, 40 Nm, then 90°; order 1-3-2-4'; what a self-locking nut takes comes on top in each round. */
    private static @Nullable String stages(BoltedJoint joint, String language) {
        JointFacts.Stages stages = joint.stages().orElse(null);
        if (stages == null) {
            return null;
        }
        String torques = stages.torquesNm().stream()
                .map(torque -> Digits.plain(torque) + " Nm")
                .collect(Collectors.joining(", "));
        String angles = stages.anglesDegrees().stream()
                .map(angle -> ", then " + Digits.plain(angle) + "°")
                .collect(Collectors.joining());
        String sequence = stages.sequence().stream().map(String::valueOf).collect(Collectors.joining("-"));
        String order = stages.order() == null ? sequence : stages.order().in(language);
        String running = joint.prevailingNm() == null ? "" : ", in each with what the nut takes on top";
        return torques + angles + running + (order.isEmpty() ? "" : "; order: " + order);
    }

    static PageBuilder compose(KitFixings fixings, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Joints").landscape().footer(footer);
        page.title("Fixings by joint").add(KitReport.head(kit, "fixings")).add(figures("figures", fixings));
        FindingsTable.add(page, kit.answered(fixings.findings()), kit.workshop().language());
        page.heading("Joints")
                .note(marks(fixings))
                .add(joints(fixings, kit.workshop()))
                .note(TABLES + " " + SELF_LOCKING + (staged(fixings) ? " " + IN_STAGES : ""));
        DocumentsTable.add(page, kit.bill().all().filter(item -> bolted(item, fixings)));
        CautionNotes.always(page, "fixings", kit.workshop(), kit.workshop().language());
        return page;
    }

    /** What stands where something is bolted. */
    private static boolean bolted(Item item, KitFixings fixings) {
        return fixings.joints().stream().anyMatch(joint -> joint.position().equals(item.position()));
    }

    static TableBuilder glance(KitFixings fixings, String language) {
        TableSpec<BoltedJoint> joints =
                TableSpec.<BoltedJoint>named("joints").said("joint", "Joint", 40, BoltedJoint::name);
        return bolts(joints, language)
                .text("to-sign", "To sign", 8, JointsPage::sign)
                .of(fixings.joints());
    }

    /** How many joints and counts there are, and from which tables their torques are. */
    static ParticularsBuilder figures(String name, KitFixings fixings) {
        long toSign = fixings.joints().stream().filter(BoltedJoint::safety).count();
        long unsure = fixings.bags().stream().filter(bag -> !bag.sure()).count();
        return Particulars.named(name)
                .say("joints", "Joints", fixings.joints().size() + ", of which " + toSign + " to sign for")
                .say("tables", "Torque tables", tables(fixings))
                .say(
                        "counts",
                        "Counts by weight",
                        fixings.bags().size() + ", " + unsure + " of them only once ten of the batch are weighed");
    }

    private static String tables(KitFixings fixings) {
        String tables = fixings.joints().stream()
                .filter(joint -> joint.ownTorque().isEmpty())
                .map(BoltedJoint::torqueFrom)
                .filter(Objects::nonNull)
                .distinct()
                .collect(Collectors.joining("; "));
        long own = fixings.joints().stream()
                .filter(joint -> joint.ownTorque().isPresent())
                .count();
        return own == 0 ? tables : tables + "; " + own + " joints after a drawing or maker of their own";
    }

    /** 'Cradle: Cradle rail (PV-CR)'; what is called as its joint is not said twice. */
    static String what(BoltedJoint joint, String language) {
        String held = joint.held().in(language);
        String says = joint.name().in(language);
        boolean same = joint.held().english().startsWith(joint.says());
        return held.isEmpty() ? says : same ? held : says + Note.colon(language) + held;
    }

    /** What the torque is from, with the friction that it stands for. */
    private static @Nullable String source(BoltedJoint joint) {
        String from = ofTorque(joint, BoltedJoint::torqueFrom);
        BigDecimal friction = joint.fixing().friction();
        return from == null || friction == null ? from : from + ", friction " + Digits.plain(friction);
    }

    /** What torques are from, in the order of the joints. */
    private static List<String> sources(KitFixings fixings) {
        return fixings.joints().stream()
                .map(JointsPage::source)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** The letter of the table that the joint's torque is from. */
    static @Nullable String mark(BoltedJoint joint, KitFixings fixings) {
        int at = sources(fixings).indexOf(source(joint));
        return at < 0 ? null : letter(at);
    }

    /** A to Z, then AA. */
    private static String letter(int at) {
        String last = String.valueOf((char) ('A' + at % LETTERS));
        return at < LETTERS ? last : letter(at / LETTERS - 1) + last;
    }

    /** 'Torque tables: A to VDI 2230, 90 % of yield. B …' */
    static String marks(KitFixings fixings) {
        List<String> sources = sources(fixings);
        return IntStream.range(0, sources.size())
                .mapToObj(at -> letter(at) + " – " + sources.get(at))
                .collect(Collectors.joining("; ", "Under 'Table': ", "."));
    }

    /** By fit stage. */
    private static TableBuilder joints(KitFixings fixings, Workshop workshop) {
        TableSpec<BoltedJoint> spec = spec(fixings, workshop.language());
        TableBuilder table = spec.empty();
        String stage = "";
        for (BoltedJoint joint : fixings.joints()) {
            if (!joint.position().stage().equals(stage)) {
                stage = joint.position().stage();
                table.group(stage, workshop.stageSays(stage, workshop.language()));
            }
            spec.add(table, "", joint);
        }
        return table;
    }

    /** How many bolts of which size, with their torque and the friction that it stands for. */
    static TableSpec<BoltedJoint> bolts(TableSpec<BoltedJoint> spec, String language) {
        return torques(spec.quantity("quantity", "Bolts", "", BoltedJoint::quantity)
                .text("size", "Size, class", 18, joint -> size(joint, language))
                .decimal("torque", "Torque", "Nm", 1, joint -> ofTorque(joint, BoltedJoint::torqueNm))
                .decimal(
                        "friction",
                        "Friction",
                        "",
                        2,
                        joint -> ofTorque(joint, of -> of.fixing().friction())));
    }

    /** What a self-locking thread adds to the torque. */
    private static TableSpec<BoltedJoint> torques(TableSpec<BoltedJoint> spec) {
        return spec.decimal(
                        "prevailing",
                        "Self-locking, at most",
                        "Nm",
                        1,
                        joint -> ofTorque(joint, BoltedJoint::prevailingNm))
                .decimal("wrench", "Wrench, at most", "Nm", 1, joint -> ofTorque(joint, JointsPage::wrench));
    }

    /** Where a self-locking thread adds to it. */
    private static @Nullable BigDecimal wrench(BoltedJoint joint) {
        return joint.prevailingNm() == null ? null : joint.wrenchNm();
    }

    private static @Nullable String sign(BoltedJoint joint) {
        return joint.safety() ? "yes" : null;
    }

    /** 'M8 × 25, 8.8'; a set by its name, 'Earth bolt set M8 (FX-E8)'. */
    private static String size(BoltedJoint joint, String language) {
        if (joint.calledByName()) {
            return joint.bolt().name().in(language) + " (" + joint.bolt().number() + ")";
        }
        Fixing fixing = joint.fixing();
        BigDecimal length = fixing.lengthMm();
        return fixing.thread() + (length == null ? "" : " × " + Digits.plain(length)) + ", "
                + (fixing.propertyClass() == null ? "class unknown" : fixing.propertyClass());
    }

    /** A torque is never printed without the table and the friction that it stands for, or its own drawing. */
    static <T> @Nullable T ofTorque(BoltedJoint joint, Function<BoltedJoint, @Nullable T> figure) {
        Fixing fixing = joint.fixing();
        boolean complete = fixing.torqueNm() != null && fixing.torqueTable() != null && fixing.friction() != null;
        return complete || joint.ownTorque().isPresent() ? figure.apply(joint) : null;
    }

    /** '4 × Flat washer M8; 4 × Self-locking nut M8': names that say it all; part numbers stand on the bags' page. */
    private static String with(BoltedJoint joint, String language) {
        return joint.with().stream()
                .map(each -> Digits.plain(each.quantity()) + " × "
                        + each.part().name().in(language))
                .collect(Collectors.joining("; "));
    }
}
